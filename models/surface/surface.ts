import type { Curves, Holes } from '../curves/curves.ts';
import { outermost } from '../curves/rim/plan.ts';
import type { Point } from '../curves/segment.ts';
import { undersideHeight } from '../curves/underside.ts';
import type { Cut } from './cut.ts';
import { type Intervals, without } from './interval.ts';
import { type Blank, type Parts, partsOf } from './parts.ts';

/** The wood of a bridge, standing over the plan. All in mm. */
export interface Surface {
  /** x0, y0, z0, x1, y1, z1 of the whole. */
  readonly box: readonly [number, number, number, number, number, number];
  /** The wood over (x, y) as stretches of z from below to above; empty where there is none. */
  columns(x: number, y: number): Intervals;
  /**
   * Places in plan where something begins, ends or turns, at a height or at any: whoever walks over the wood should
   * stop there.
   */
  landmarks(z?: number): readonly Point[];
}

/**
 * The wood standing over each place of the plan, in closed form from the curves: a road to the part beside the exact
 * solid and the mesh. With the solid it shares the top and the rim (`curves/rim`), so that it is no test of these: the
 * draft is, which has an edge of its own.
 *
 * @param holes whether the pin holes are as drilled or as reamed
 */
export function surfaceOf(curves: Curves, holes: Holes): Surface {
  const parts = partsOf(curves, holes);
  return {
    box: boxOf(parts),
    columns: (x, y) => columns(parts, parts.cuts, x, y),
    landmarks: (z) => landmarks(parts, z),
  };
}

/** The wood over (x, y) after the edge and the cuts given. */
export function columns(blank: Blank, cuts: readonly Cut[], x: number, y: number): Intervals {
  return blank.plan.contains(x, y) ? woodUnder(blank, cuts, x, y, topOver(blank, x, y)) : [];
}

/** z of the top over a place inside the outline, lower where the edge has been taken off. */
export function topOver({ plan, top, edge }: Blank, x: number, y: number): number {
  const near = edge && plan.nearest(x, y, edge.reach);
  return near ? edge.height(x, y, near) : top.height(x, 0);
}

/** The wood over a place inside the outline from underside to `high`, after the cuts given. */
export function woodUnder(
  { underside }: Blank,
  cuts: readonly Cut[],
  x: number,
  y: number,
  high: number,
): Intervals {
  const low = undersideHeight(underside, x, y);
  let wood: Intervals = high > low ? [[low, high]] : [];
  for (const cut of cuts) {
    const { box } = cut;
    if (x < box.x0 || x > box.x1 || y < box.y0 || y > box.y1) continue;
    const removed = cut.removed(x, y);
    if (removed) wood = without(wood, removed[0], removed[1]);
  }
  return wood;
}

/** No cut takes a whole side away, so the body's own box is the part's. */
export function boxOf({ plan, top, underside }: Blank): Surface['box'] {
  const { x0, y0, x1, y1 } = plan.box;
  const lowest = Math.min(...outermost(plan.pieces).map(([x, y]) => undersideHeight(underside, x, y)));
  // a profile is highest at a joint, on top of a hill, or where the outline ends it
  const places = [
    x0,
    x1,
    ...top.joints(0),
    ...top.pieces.flatMap((s) => (s.kind === 'arc' ? s.centre[0] : [])),
  ];
  const highest = Math.max(...places.filter((x) => x >= x0 && x <= x1).map((x) => top.height(x, 0)));
  return [x0, y0, lowest, x1, y1, highest];
}

function landmarks({ plan, top, edge, cuts }: Parts, z: number | undefined): readonly Point[] {
  const inside = edge ? edge.breaks.map((s) => edge.across(s)(0)) : [];
  return [
    ...outermost(plan.pieces),
    ...inside.map(([x, y]): Point => [x, y]),
    // a dome's middle, and where the top bends
    ...[0, ...top.joints(0)].map((x): Point => [x, 0]),
    ...cuts.flatMap((cut) => cut.landmarks(z)),
  ];
}
