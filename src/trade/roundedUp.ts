/** A size that must be at least so much, rounded up to so many decimals: what is said is then enough. */
export function roundedUp(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  // binary fractions may add so much without being more
  return Math.ceil(value * scale - 1e-6) / scale;
}
