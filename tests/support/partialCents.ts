/** How far partial n lies above n times the ideal string's fundamental, cents: f_n = n·f₀·√(1 + B·n²) (S7). */
export function partialCents(b: number, partial: number): number {
  return (600 / Math.LN2) * Math.log1p(b * partial ** 2);
}
