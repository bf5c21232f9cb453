import type { Pin } from './curves.ts';

/** The pins by the rows they stand in: one, or two if every second stands back. */
export function pinRows(pins: readonly Pin[]): readonly (readonly Pin[])[] {
  const [a, b, c] = pins.map(({ at }) => at);
  if (!a || !b || !c) return [pins];
  const aside = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  if (Math.abs(aside) < 1e-6) return [pins];
  return [0, 1].map((row) => pins.filter((_, i) => i % 2 === row));
}
