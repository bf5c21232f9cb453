import { polygon } from '../../../models/curves/chain.ts';
import type { Curves } from '../../../models/curves/curves.ts';
import { type Chain, distance, type Point } from '../../../models/curves/segment.ts';
import { slotFloor, slotToPart } from '../../../models/curves/slot.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { blankOf } from '../../../models/surface/parts.ts';
import type { Judged, Spot } from './finding.ts';

/** How far over the wood a line is drawn, mm: enough to be seen, too little to float. */
const LIFT = 0.2;
/** How far a drawn line may stray from the curve it stands for, mm. */
const DEVIATION = 0.05;
/** Pieces of a line along the slot, of a circle. */
const [ALONG, ROUND] = [16, 32];

/** A line in plan, laid over the top as it is left when its edge is worked: on the outline that is the wall's own top. */
export function overTop(curves: Curves, points: readonly Point[]): readonly Spot[] {
  const { plan, edge } = blankOf(curves);
  return points.map(([x, y]) => {
    const near = edge && plan.nearest(x, y, edge.reach);
    const z = edge && near ? edge.height(x, y, near) : topHeight(curves.profile, x);
    return [x, y, z + LIFT];
  });
}

/** Between two points in plan, over the top: in pieces, since the top is not straight. */
export function between(curves: Curves, a: Point, b: Point): readonly Spot[] {
  const pieces = Math.max(1, Math.ceil(distance(a, b)));
  return overTop(
    curves,
    Array.from({ length: pieces + 1 }, (_, i) => {
      const t = i / pieces;
      return [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])] as const;
    }),
  );
}

/** Round a pin hole at the surface. */
export function roundPin(curves: Curves, i: number): readonly Spot[] {
  const pin = curves.pins[i];
  if (!pin) return [];
  const turn = (k: number): Point => {
    const angle = (2 * Math.PI * k) / ROUND;
    return [pin.at[0] + pin.reach * Math.cos(angle), pin.at[1] + pin.reach * Math.sin(angle)];
  };
  return overTop(
    curves,
    Array.from({ length: ROUND + 1 }, (_, k) => turn(k)),
  );
}

/** A string from its crown to its pin. */
export function alongString({ accepted: { curves }, report }: Judged, i: number): readonly Spot[] {
  const [crown, pin] = [report.crowns[i], curves.pins[i]];
  if (!crown || !pin) return [];
  return [
    [crown.at[0], crown.at[1], crown.height + LIFT],
    [pin.at[0], pin.at[1], pin.top + LIFT],
  ];
}

/** The saddle under a string, from the slot's floor to the crown. */
export function saddleUnder({ accepted: { curves }, report }: Judged, i: number): readonly Spot[] {
  const { slot, profile } = curves;
  const crown = report.crowns[i];
  if (!crown) return [];
  const u = crown.at[0] / Math.cos(slot.angle);
  const [x, y, z] = slotToPart(slot, profile.thickness, u, 0, slotFloor(slot, u));
  return [
    [x, y, z + LIFT],
    [crown.at[0], crown.at[1], crown.height + LIFT],
  ];
}

/** How far to either side a slot lies in wood that stands full, mm along it. */
export function slotReach({ slot, profile }: Pick<Curves, 'slot' | 'profile'>): number {
  return slot.roundEnds
    ? slot.halfLength
    : Math.min(slot.halfLength, profile.crownEnd / Math.cos(slot.angle));
}

/** One of the slot's walls where it comes out of the top: 1 the front, −1 the back. */
export function slotWall(curves: Curves, side: 1 | -1): readonly Spot[] {
  const { slot, profile } = curves;
  const half = slotReach(curves) - (slot.roundEnds ? slot.width / 2 : 0);
  return overTop(
    curves,
    alongSlot(half).map((u) => {
      const [x, y] = slotToPart(slot, profile.thickness, u, (side * slot.width) / 2, 0);
      return [x, y] as const;
    }),
  );
}

/** The middle of the slot's floor. */
export function floorLine(curves: Curves): readonly Spot[] {
  const { slot, profile } = curves;
  return alongSlot(slotReach(curves)).map((u) => {
    const [x, y, z] = slotToPart(slot, profile.thickness, u, 0, slotFloor(slot, u));
    return [x, y, z + LIFT];
  });
}

/** All round the slot, at the top. */
export function slotRim(curves: Curves): readonly (readonly Spot[])[] {
  return [slotWall(curves, 1), slotWall(curves, -1)];
}

function alongSlot(half: number): readonly number[] {
  return Array.from({ length: ALONG + 1 }, (_, i) => half * ((2 * i) / ALONG - 1));
}

/** How much of each wing counts as its tip, mm. */
const TIP = 4;

/** The top's edge round both wing tips. */
export function tipLines(curves: Curves): readonly (readonly Spot[])[] {
  const points = polygon(curves.outline, DEVIATION);
  const half = Math.max(...points.map(([x]) => x));
  return [1, -1].map((side) => {
    const isTip = ([x]: Point) => side * x > half - TIP;
    // the outline may begin in the middle of a tip: the line begins where the tip does
    const begins = points.findIndex((p, i) => isTip(p) && !isTip(points.at(i - 1) ?? p));
    const round = [...points.slice(begins), ...points.slice(0, begins)];
    const ends = round.findIndex((p) => !isTip(p));
    return overTop(curves, round.slice(0, ends));
  });
}

/** A piece of the outline, at the top. */
export function alongOutline(curves: Curves, piece: Chain): readonly Spot[] {
  const last = piece[piece.length - 1];
  return overTop(curves, [...polygon(piece, DEVIATION), ...(last ? [last.to] : [])]);
}
