import { blockCorner } from '../../../models/curves/blockCorner.ts';
import type { Curves } from '../../../models/curves/curves.ts';
import { halfLengthOf } from '../../../models/curves/outlinePieces.ts';
import { type Arc, type Point, pointAt, type Segment } from '../../../models/curves/segment.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import type { Place } from './dimension.ts';

const UP = Math.PI / 2;

/** Where the elevation's dimensions may stand, by path. */
export function elevationDimensions(curves: Curves): ReadonlyMap<string, readonly Place[]> {
  const half = halfLengthOf(curves.outline);
  const { profile } = curves;
  const floor = undersideHeight(curves.underside, half, 0);
  const middle = (profile.chain.length - 1) / 2;
  const [crown, shoulder, blend] = [0, 1, 2].map((n) => profile.chain[middle + n]) as [Arc, Segment, Arc];
  const linear = { kind: 'linear', view: 'elevation' } as const;
  const corner = blockCorner(crown, shoulder, blend);
  return new Map<string, readonly Place[]>([
    [
      'footprint.length',
      [{ ...linear, side: 'below', rank: 0, along: 0, from: [-half, floor], to: [half, floor] }],
    ],
    [
      'top.tip',
      [
        {
          ...linear,
          side: 'right',
          rank: 0,
          along: UP,
          from: [half, floor],
          to: [half, topHeight(profile, half)],
        },
      ],
    ],
    [
      'top.block',
      [{ ...linear, side: 'above', rank: 1, along: 0, from: [-corner[0], corner[1]], to: corner }],
    ],
    [
      'top.thickness',
      [{ ...linear, side: 'left', rank: 0, along: UP, from: [-half, 0], to: [0, profile.thickness] }],
    ],
    ['top.crownRadius', [onCrown(crown, profile.crownEnd)]],
    ['top.blend', onBlend(blend)],
  ]);
}

/** A little aside of the middle, so that the leader keeps clear of the centre line. */
function onCrown(crown: Arc, crownEnd: number): Place {
  const x = 0.22 * crownEnd;
  const z = crown.centre[1] + Math.sqrt(crown.radius ** 2 - x * x);
  const way: Point = [x / crown.radius, (z - crown.centre[1]) / crown.radius];
  return { kind: 'radius', view: 'elevation', at: [x, z], way, hand: 1, leg: { rank: 0 } };
}

/** Leaders of several lengths over the right wing: one of them finds room between block and plan. */
function onBlend(blend: Arc): readonly Place[] {
  return [0.55, 0.75].flatMap((share) => {
    const at = pointAt(blend, share);
    const way: Point = [(blend.centre[0] - at[0]) / blend.radius, (blend.centre[1] - at[1]) / blend.radius];
    return [10, 16, 24].map(
      (px): Place => ({ kind: 'radius', view: 'elevation', at, way, hand: 1, leg: { px } }),
    );
  });
}
