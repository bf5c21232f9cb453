/**
 * A solved dimension as it goes into the part: to a ten-thousandth of a millimetre or degree, far below any bench, so that
 * setting it by hand keeps the very number.
 */
export function rounded(value: number): number {
  return Math.round(value * 1e4) / 1e4;
}
