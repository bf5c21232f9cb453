import type { Point } from '../../models/curves/segment.ts';

/**
 * Where a string crosses its saddle's crown in plan, mm: on the slot's centre line at the string's x, moved along the
 * string by how far the crown is filed from there (toward the nut positive), and back by how far a tilted saddle leans.
 * A tilted slot turns about its line on the top at the middle, so the lean counts from that height. Plane geometry; axes as a design's.
 *
 * @param slotAngle degrees, positive counter-clockwise seen from above: a left-handed design has it negative
 * @param tilt degrees toward the pins
 * @param overMiddle z of the crown less the bridge's thickness at the middle, mm
 */
export function crownPlace(
  x: number,
  slotAngle: number,
  filed: number,
  tilt: number,
  overMiddle: number,
): Point {
  const angle = (slotAngle * Math.PI) / 180;
  // the lean is square to the slot; along the string it meets the crown's line 1/cos further
  const lean = (overMiddle * Math.tan((tilt * Math.PI) / 180)) / Math.cos(angle);
  return [x, x * Math.tan(angle) + filed - lean];
}
