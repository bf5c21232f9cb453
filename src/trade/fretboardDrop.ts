import { drop } from '../../models/curves/profile.ts';

/**
 * How far a fretboard of this radius has fallen at x from its middle, mm: R − √(R² − x²). Plane geometry.
 * On a conical board the radius is the cone's over the place asked for, `fretboardRadius` of the curves.
 *
 * @throws RangeError when the arc doesn't reach so far: a cone may narrow to nothing before it gets to the saddle
 */
export function fretboardDrop(radius: number, x: number): number {
  if (!(radius >= Math.abs(x))) {
    throw new RangeError(`an arc of radius ${radius} mm doesn't reach ${Math.abs(x)} mm from its middle`);
  }
  return drop(radius, x);
}
