import { polygon } from '../../../models/curves/chain.ts';
import type { Curves } from '../../../models/curves/curves.ts';
import { openEnd } from '../../../models/curves/openEnd.ts';
import { type Chain, line, type Point } from '../../../models/curves/segment.ts';
import { slotToPart } from '../../../models/curves/slot.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { straights } from '../paper/inks.ts';
import { turned } from '../paper/turned.ts';

/** How far chords may stray from a leaning slot's rim, which is no circle, mm. */
const STRAY = 0.002;

/**
 * Where the slot comes out of the top, or of another surface, seen from above: closed, counter-clockwise, mm.
 *
 * @param surface height of the surface at x
 */
export function slotMouth(
  curves: Curves,
  surface: (x: number) => number = (x) => topHeight(curves.profile, x),
): Chain {
  const { slot, profile } = curves;
  const plan = slot.roundEnds ? slot.plan : rectangle(openEnd(slot, profile), slot.width / 2);
  if (slot.tilt === 0) return turned(plan, slot.angle);
  const rim = polygon(plan, STRAY).map(([u, v]): Point => {
    let w = 0;
    // the top hardly slopes over what a leaning wall goes aside: a few rounds settle it
    for (let i = 0; i < 8; i++) {
      const [x, , z] = slotToPart(slot, profile.thickness, u, v, w);
      w += (surface(x) - z) / Math.cos(slot.tilt);
    }
    const [x, y] = slotToPart(slot, profile.thickness, u, v, w);
    return [x, y];
  });
  return straights(rim, true);
}

function rectangle(u: number, v: number): Chain {
  const [a, b, c, d]: readonly [Point, Point, Point, Point] = [
    [-u, -v],
    [u, -v],
    [u, v],
    [-u, v],
  ];
  return [line(a, b), line(b, c), line(c, d), line(d, a)];
}
