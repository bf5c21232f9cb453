import type { Curves, Holes } from '../curves/curves.ts';
import { slicesAlong } from './slicesAlong.ts';

/** A section square to the bridge's length. */
export interface BendingStation {
  readonly x: number;
  readonly areaMm2: number;
  /** Height of the section's centroid over the glue plane. */
  readonly centroidMm: number;
  /** Second moment of area about the horizontal axis through the centroid. */
  readonly secondMm4: number;
}

/** What bends along the bridge: x rises from tip to tip; where something ends at once, two stations a hair apart. */
export interface Bending {
  readonly stations: readonly BendingStation[];
}

/**
 * Area, centroid and second moment of area of the sections along the bridge, slot, pin holes and channels taken out:
 * times the timber's stiffness along the grain it is the bending stiffness in the upright plane along X. Straight lines
 * between stations tell the curve within a thousandth, but for the last fraction of a millimetre at the side of a hole
 * or of a round tip. Neglected: that the axis through the centroids isn't straight, that sections lean, saddle and pins,
 * and the soundboard that the bridge is glued to.
 */
export function bendingAlong(curves: Curves, holes: Holes): Bending {
  return {
    stations: slicesAlong(curves, holes).map(({ x, areaMm2, centroidMm, secondMm4 }) => ({
      x,
      areaMm2,
      centroidMm: centroidMm[1],
      secondMm4,
    })),
  };
}
