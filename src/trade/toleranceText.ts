import type { Tolerance } from './tolerances.ts';

/** A tolerance as it stands beside its value, on every paper alike: `±0.1`, `+0.05/0`, `+0.2/−0.1`. */
export function toleranceText(
  { minus, plus }: Pick<Tolerance, 'minus' | 'plus'>,
  say: (size: number) => string = (size) => String(Number(size.toFixed(2))),
): string {
  if (minus === plus) return `±${say(plus)}`;
  const limit = (sign: string, size: number) => (Number(say(size)) === 0 ? '0' : `${sign}${say(size)}`);
  return `${limit('+', plus)}/${limit('−', minus)}`;
}
