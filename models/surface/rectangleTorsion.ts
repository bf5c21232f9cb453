/**
 * Torsion constant of a rectangle, mm⁴: b·t³(1/3 − 0.21·t/b·(1 − t⁴/12b⁴)) for t ≤ b, the usual handbook form of
 * Saint-Venant's series, right within half a percent (from memory, checked against the series).
 */
export function rectangleTorsion(width: number, height: number): number {
  const [t, b] = width < height ? [width, height] : [height, width];
  return b === 0 ? 0 : b * t ** 3 * (1 / 3 - 0.21 * (t / b) * (1 - t ** 4 / (12 * b ** 4)));
}
