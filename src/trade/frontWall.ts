/**
 * Bending stress at the foot of the wood in front of a slot, MPa: B8, 6Fa/(s·t²), as of a cantilever. Derived, and
 * conservative: the wall's hold on its neighbours is left out. A warning, never a strength.
 *
 * @param force F, at the wall's mouth, N (see `slotWalls`)
 * @param height a, the slot's depth, mm
 * @param share s, the length of slot that is this string's, mm
 * @param thickness t, the least wood in front of the slot, mm
 * @throws RangeError when there is no wall
 */
export function frontWall(force: number, height: number, share: number, thickness: number): number {
  if (!(share > 0 && thickness > 0)) throw new RangeError(`a wall ${share} mm long, ${thickness} mm thick`);
  return (6 * force * height) / (share * thickness ** 2);
}
