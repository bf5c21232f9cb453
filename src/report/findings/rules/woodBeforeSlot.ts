import type { Curves } from '../../../../models/curves/curves.ts';
import type { Point } from '../../../../models/curves/segment.ts';
import { slotFloor, slotToPart } from '../../../../models/curves/slot.ts';
import { below, mm } from '../../said.ts';
import { nearestPlace } from '../nearestPlace.ts';
import { overTop, slotReach, slotWall } from '../places.ts';
import { rule } from '../rule.ts';

export const woodBeforeSlot = rule({
  id: 'wood-before-slot',
  about: 'wood',
  watches: 'The wood before the slot, that the saddle leans on.',
  judge: ({ accepted: { design, curves } }) => {
    const { woodBefore: limit } = design.limits;
    const { wood, from, to, atFloor } = thinnest(curves);
    if (!below(wood, limit)) return undefined;
    return {
      severity: 'warning',
      text: `${mm(wood)} of wood stand before the slot ${atFloor ? 'at its floor' : 'at the top'}, measured in plan to the outline before the edge is worked: the strings push the saddle against it, and it may shear off.`,
      found: mm(wood),
      limit: `at least ${mm(limit)}`,
      source: 'Common practice (2 to 3 mm), no source.',
      path: 'footprint.slotBehindFront',
      limitPath: 'limits.woodBefore',
      place: [slotWall(curves, 1), overTop(curves, [from, to])],
      mends: ['footprint.slotBehindFront', 'saddle.slotWidth', 'saddle.slotLength', 'saddle.tilt'],
    };
  },
});

interface Thinnest {
  readonly wood: number;
  /** On the slot's wall, and on the outline. */
  readonly from: Point;
  readonly to: Point;
  readonly atFloor: boolean;
}

/** Distance between the places looked at along the wall, mm. */
const EVERY = 1;

/** Where front wall and outline come nearest in plan, at the top and at the floor: a tilted slot leans forward below. */
function thinnest(curves: Curves): Thinnest {
  const { slot, profile, outline } = curves;
  let best: Thinnest = { wood: Number.POSITIVE_INFINITY, from: [0, 0], to: [0, 0], atFloor: false };
  for (const [u, v] of frontWall(curves)) {
    for (const atFloor of [false, true]) {
      const [x, y] = slotToPart(slot, profile.thickness, u, v, atFloor ? slotFloor(slot, u) : 0);
      const near = nearestPlace(outline, [x, y]);
      if (near.distance < best.wood) best = { wood: near.distance, from: [x, y], to: near.point, atFloor };
      if (slot.tilt === 0) break;
    }
  }
  return best;
}

/** Places (u, v) along the slot's front wall, round ends included as far as they face the front. */
function frontWall(curves: Curves): readonly Point[] {
  const { slot } = curves;
  const r = slot.width / 2;
  const half = slotReach(curves) - (slot.roundEnds ? r : 0);
  const pieces = Math.ceil((2 * half) / EVERY);
  const wall = Array.from({ length: pieces + 1 }, (_, i): Point => [half * ((2 * i) / pieces - 1), r]);
  const ends = [0, 15, 30, 45, 60, 75].flatMap((degrees): Point[] => {
    const [du, dv] = [r * Math.cos((degrees * Math.PI) / 180), r * Math.sin((degrees * Math.PI) / 180)];
    return [
      [half + du, dv],
      [-half - du, dv],
    ];
  });
  return slot.roundEnds ? [...wall, ...ends] : wall;
}
