/** Steps between written values, in each decade. */
const STEPS = [1, 2, 5] as const;

/** Round values from 0 to at least `most`, no more than `count` steps of them. */
export function ticks(most: number, count: number): readonly number[] {
  const decade = 10 ** Math.floor(Math.log10(most / count));
  const step = [...STEPS, 10].map((s) => s * decade).find((s) => most / s <= count) ?? most;
  return Array.from({ length: Math.ceil(most / step - 1e-9) + 1 }, (_, i) => i * step);
}
