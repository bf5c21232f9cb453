import type { Curves, Holes } from '../../../models/curves/curves.ts';
import { openEnd } from '../../../models/curves/openEnd.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { section } from '../../../models/surface/section.ts';
import { surfaceOf } from '../../../models/surface/surface.ts';
import { path } from '../paper/inks.ts';
import { type Cut, extentOf } from './acrossView.ts';

const STRAY = 0.002;
const PAST = 1.5;

/**
 * The section along the slot, seen from the tail: along the slot to the right from its middle, z up. The plane is
 * upright; where the slot leans it passes the slot's middle at half its depth.
 */
export function alongView(curves: Curves, holes: Holes): Cut {
  const { slot, profile } = curves;
  const [c, s] = [Math.cos(slot.angle), Math.sin(slot.angle)];
  const aside = (slot.depth / 2) * Math.sin(slot.tilt);
  const from: Point = [-aside * s, aside * c];
  const { pieces } = section(
    surfaceOf(curves, holes),
    { across: 'plan', from, to: [from[0] + c, from[1] + s] },
    STRAY,
  );
  const extent = extentOf(pieces.flatMap(({ outer }) => outer));
  const half = slotReach(curves);
  const rim = Array.from({ length: 41 }, (_, i): Point => {
    const u = half * (i / 20 - 1);
    return [u, topHeight(profile, u * c)];
  });
  return {
    pieces,
    extent,
    inks: [
      // the wall beyond the plane ends in the crown
      path('section', 'detail', rim),
      ...pieces.flatMap(({ outer, holes }) =>
        [outer, ...holes].map((loop) => path('section', 'outline', loop, true)),
      ),
      path('centre', 'centre', [
        [0, extent[1] - PAST],
        [0, profile.thickness + PAST],
      ]),
    ],
  };
}

/** How far along itself the slot goes in wood to either side, mm. */
export function slotReach({ slot, profile }: Curves): number {
  return slot.roundEnds ? slot.halfLength : openEnd(slot, profile);
}
