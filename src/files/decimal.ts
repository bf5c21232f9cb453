/**
 * A number in plain decimals, as every format of text takes it: never an exponent, never −0, no noise behind the last
 * figure that counts. Throws for what is no number: a file that says NaN is worse than none.
 *
 * @param places behind the point
 */
export function decimal(value: number, places = 5): string {
  if (!Number.isFinite(value)) throw new Error(`${value} can't be written in a file`);
  const text = value.toFixed(places);
  const short = places > 0 ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
}
