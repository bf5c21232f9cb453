import { fretboardDrop } from './fretboardDrop.ts';

/**
 * How much higher than at the neck's joint a domed soundboard stands at the bridge, mm: R − √(R² − d²), the dome's
 * highest place being at the saddle line and d the distance from there to the joint. Plane geometry. A top
 * whose upper bout is flattened rises less: measure it.
 *
 * @throws RangeError when the dome doesn't reach the joint
 */
export function domeRise(radius: number, jointToSaddle: number): number {
  return fretboardDrop(radius, jointToSaddle);
}
