/** A worked-out number as it is shown at the bench: hundredths, of long radii tenths. */
export function readable(value: number): string {
  return value.toFixed(Math.abs(value) >= 100 ? 1 : 2).replace('-', '−');
}
