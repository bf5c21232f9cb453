import type { Point } from '../../models/curves/segment.ts';

/**
 * How much a string turns in plan over its saddle, degrees: positive when it goes on to its pin more to +X (a
 * right-handed guitar's treble side) than it came. Plane geometry.
 *
 * @param nut where the string comes from, mm; any place of it in front of the saddle
 * @param crown where it crosses the saddle, mm
 * @param pin middle of its pin hole, mm
 */
export function sideAngle(nut: Point, crown: Point, pin: Point): number {
  const [ax, ay] = [crown[0] - nut[0], crown[1] - nut[1]];
  const [bx, by] = [pin[0] - crown[0], pin[1] - crown[1]];
  // strings run toward −Y, so a turn counter-clockwise seen from above is a turn to +X
  return (Math.atan2(ax * by - ay * bx, ax * bx + ay * by) * 180) / Math.PI;
}
