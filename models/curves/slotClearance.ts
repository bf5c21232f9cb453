import type { Design } from '../../src/design/design.ts';
import { type Problem, tooMuch, unfitting } from '../../src/design/problem.ts';
import { polygon } from './chain.ts';
import type { Curves, Slot } from './curves.ts';
import { edgeSize } from './edgeClearance.ts';
import { LEAST_WOOD } from './pins.ts';
import { distanceBetween, isWithin, type Polygon } from './polygons.ts';
import type { Point } from './segment.ts';
import { slotFloor, slotToPart } from './slot.ts';
import { topHeight } from './topHeight.ts';
import { undersideHeight } from './underside.ts';

/** How far a polygon may stray from the curve it stands for, mm. */
const DEVIATION = 0.02;
/** How far the floor of a slot that runs out must pass over the wings, mm. */
const LEAST_AIR = 0.1;

/** Whether the saddle slot stays in the block, in the wood and away from the edges. */
export function slotClearance(design: Design, curves: Curves): readonly Problem[] {
  return [...slotInBlock(design, curves), ...slotInOutline(design, curves), ...slotDepth(design, curves)];
}

/** The slot's outline in the part's plan, mm, seen at the crown and at the floor: a tilted slot leans between them. */
export function slotPlans({ slot, profile }: Curves): readonly Polygon[] {
  const plan = polygon(slot.plan, DEVIATION);
  return [0, 1].map((down) =>
    plan.map(([u, v]): Point => {
      const [x, y] = slotToPart(slot, profile.thickness, u, v, down * slotFloor(slot, u));
      return [x, y];
    }),
  );
}

function slotInBlock({ saddle }: Design, { slot, profile }: Curves): Problem[] {
  if (!slot.roundEnds) return [];
  const longest = (2 * (profile.crownEnd - LEAST_WOOD)) / Math.cos(slot.angle);
  if (saddle.slotLength <= longest) return [];
  const remedy = 'Shorten the slot or lengthen the middle block.';
  return [tooMuch('saddle.slotLength', saddle.slotLength, longest, 'in this block', remedy)];
}

/** What can be wrong with a slot's depth, in the order in which it is said. */
const DEPTHS: readonly {
  readonly wrong: (slot: Slot, curves: Curves) => boolean;
  readonly why: string;
  readonly remedy: string;
}[] = [
  {
    wrong: (slot, curves) => woodUnder(slot, curves) < LEAST_WOOD,
    why: 'in this thickness',
    remedy: 'Make the slot shallower or the bridge thicker.',
  },
  {
    wrong: (slot, curves) => airOverWings(slot, curves) < LEAST_AIR,
    why: 'for a slot that runs out over the wings',
    remedy: 'Make the slot shallower, the wings lower, the floor flat or the ends round.',
  },
  {
    wrong: (slot, curves) => woodBesideEnds(slot, curves) < LEAST_WOOD,
    why: 'or the slot runs out where the crown falls',
    remedy: 'Deepen the slot, shorten it, flatten the crown, or let the floor follow it.',
  },
];

function slotDepth({ saddle }: Design, curves: Curves): Problem[] {
  const bad = DEPTHS.find(({ wrong }) => wrong(curves.slot, curves));
  if (!bad) return [];
  const fits = (depth: number) => !DEPTHS.some(({ wrong }) => wrong({ ...curves.slot, depth }, curves));
  return [unfitting('saddle.depth', saddle.depth, fits, bad.why, bad.remedy)];
}

/** A slot that is open at its ends leaves through the block: how far its floor passes over the wings' run, mm. */
function airOverWings(slot: Slot, { profile }: Curves): number {
  if (slot.roundEnds) return Number.POSITIVE_INFINITY;
  return Math.min(
    ...corners(slot).map(([u, v]) => {
      const [x, , z] = slotToPart(slot, profile.thickness, u, v, slotFloor(slot, u));
      return z - topHeight(profile, x);
    }),
  );
}

/** The four corners of the slot's plan (u, v). */
function corners(slot: Slot): readonly (readonly [number, number])[] {
  const [h, r] = [slot.halfLength, slot.width / 2];
  return [
    [-h, -r],
    [h, -r],
    [h, r],
    [-h, r],
  ];
}

function slotInOutline(design: Design, curves: Curves): Problem[] {
  const margin = edgeSize(design) + LEAST_WOOD;
  const outline = polygon(curves.outline, DEVIATION);
  const plans = slotPlans(curves);
  const given = design.footprint.slotBehindFront;
  /** Moving the front edge away from the slot is moving the slot back in the outline. */
  const fits = (behind: number) =>
    plans.every((plan) => {
      const moved = plan.map(([x, y]): Point => [x, y + given - behind]);
      return (
        moved.every((p) => isWithin(outline, p)) &&
        !outline.some((p) => isWithin(moved, p)) &&
        distanceBetween(outline, moved) >= margin
      );
    });
  if (fits(given)) return [];
  const why = `for a slot that keeps ${Math.round(margin * 100) / 100} mm from every edge`;
  const remedy =
    'Move the slot back or forward, deepen the footprint, or make the slot shorter, narrower or less angled.';
  return [unfitting('footprint.slotBehindFront', given, fits, why, remedy)];
}

/** Wood under the slot's floor where it is thinnest, mm. */
function woodUnder(slot: Slot, { profile, underside }: Curves): number {
  const stations = [0, 0.5, 1].flatMap((t) => [t * slot.halfLength, -t * slot.halfLength]);
  return Math.min(
    ...stations.flatMap((u) =>
      [-1, 1].map((side) => {
        const [x, y, z] = slotToPart(slot, profile.thickness, u, (side * slot.width) / 2, slotFloor(slot, u));
        // over the wings an open slot's floor is in the air
        return topHeight(profile, x) < z ? Number.POSITIVE_INFINITY : z - undersideHeight(underside, x, y);
      }),
    ),
  );
}

/** The crown falls toward its ends, and a leaning slot more at one: how much of its depth is left in the wood there, mm. */
function woodBesideEnds(slot: Slot, { profile }: Curves): number {
  const end = slot.roundEnds ? slot.halfLength : Math.min(slot.halfLength, profile.crownEnd);
  const left = [-1, 1].flatMap((toward) =>
    [-1, 0, 1].map((side) => {
      const u = toward * (slot.roundEnds && side !== 0 ? end - slot.width / 2 : end);
      const [x, , z] = slotToPart(slot, profile.thickness, u, (side * slot.width) / 2, slotFloor(slot, u));
      return topHeight(profile, x) - z;
    }),
  );
  return Math.min(...left);
}
