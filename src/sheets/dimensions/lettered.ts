import { distance, type Point } from '../../../models/curves/segment.ts';
import { type Box, isInside, type OrientedBox, overlap, runsThrough } from '../paper/box.ts';
import { inkLines } from '../paper/inkLines.ts';
import { TEXT, type TextInk, words } from '../paper/inks.ts';
import { remembered } from '../paper/remembered.ts';
import type { Ink, Pen, Typeface } from '../sheet.ts';
import { textBox } from '../textBox.ts';
import type { Draft, Spot } from './draft.ts';

/** What it costs a text to run into something. */
const COST = {
  text: 100,
  frame: 100,
  thick: 40,
  thin: 6,
  along: 30,
  leader: 2,
  other: 60,
  tight: 1,
} as const;
const THICK: ReadonlySet<Pen> = new Set(['outline', 'frame', 'cutting']);
/** Air round a text, mm. */
const AIR = 0.4;
/** Air between a text and another dimension's lines: half the text's height. */
const APART = TEXT / 2;

interface Wall {
  readonly from: Point;
  readonly to: Point;
  readonly thick: boolean;
  /** The dimension that it belongs to. */
  readonly of: Draft | undefined;
}

/**
 * Dimensions with their texts: each goes to the first of its places that is clear of all other texts and lines, or, if
 * none is, to the one that runs into least. Those with the fewest places go first.
 *
 * @param fixed what is on the paper already
 */
export function lettered(
  drafts: readonly Draft[],
  fixed: readonly Ink[],
  frame: Box,
  face: Typeface,
): readonly Ink[] {
  const typeface = remembered(face);
  const boxes: OrientedBox[] = fixed.flatMap((ink) => (ink.kind === 'text' ? [textBox(ink, typeface)] : []));
  const lettering: OrientedBox[] = [];
  const walls: Wall[] = [
    ...wallsOf(fixed, undefined),
    ...drafts.flatMap((draft) => wallsOf(draft.inks, draft)),
  ];
  const out: Ink[] = drafts.flatMap(({ inks }) => inks);
  for (const draft of [...drafts].sort((a, b) => a.spots.length - b.spots.length)) {
    const near = walls.filter((w) => w.of !== undefined && w.of !== draft && !shared(w, draft));
    const others = (draft.outOf ?? []).map(square);
    const spot = cheapest(draft.spots, (one) => {
      const bare = textBox(textOf(draft, one), typeface);
      const box = aired(bare);
      const own = wallsOf(one.inks, draft);
      const clear = aired(bare, APART, APART);
      return (
        COST.other *
          others.filter((o) => overlap(box, o) || own.some((w) => runsThrough(o, w.from, w.to))).length +
        COST.tight * near.filter((w) => costOf(clear, w) > 0).length +
        COST.tight *
          lettering.filter((other) => own.some((w) => costOf(aired(other, APART, APART), w) > 0)).length +
        (isInside(box, frame) ? 0 : COST.frame) +
        COST.text * boxes.filter((other) => overlap(box, other)).length +
        walls.reduce((sum, wall) => sum + costOf(wall.of === draft ? bare : box, wall), 0) +
        COST.text * own.filter((w) => !isInside(straight(w), frame)).length +
        COST.text * own.filter((w) => boxes.some((other) => runsThrough(other, w.from, w.to))).length +
        COST.along * own.filter((w) => walls.some((v) => v.of !== draft && liesAlong(w, v))).length +
        COST.leader * own.filter((w) => walls.some((v) => v.of !== draft && crosses(w, v))).length
      );
    });
    if (!spot) continue;
    const text = textOf(draft, spot);
    const placed = textBox(text, typeface);
    boxes.push(placed);
    lettering.push(placed);
    walls.push(...wallsOf(spot.inks, draft));
    out.push(...spot.inks, text);
  }
  return out;
}

function textOf({ label, style }: Draft, { at, anchor, angle }: Spot): TextInk {
  return words(label, at, { layer: 'dimensions', ...style, anchor, angle });
}

/** A straight as a box without height. */
function straight({ from, to }: Wall): OrientedBox {
  const length = Math.max(distance(from, to), 1e-9);
  return {
    centre: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2],
    along: [(to[0] - from[0]) / length, (to[1] - from[1]) / length],
    halfLength: length / 2,
    halfHeight: 0,
  };
}

function cheapest(spots: readonly Spot[], cost: (spot: Spot) => number): Spot | undefined {
  let best: { readonly spot: Spot; readonly cost: number } | undefined;
  for (const spot of spots) {
    const now = cost(spot);
    if (now === 0) return spot;
    if (!best || now < best.cost) best = { spot, cost: now };
  }
  return best?.spot;
}

function costOf(box: OrientedBox, { from, to, thick }: Wall): number {
  // most walls are nowhere near: a look at their ends spares the rest
  const [x, y] = box.centre;
  const reach = box.halfLength + box.halfHeight;
  if (Math.min(from[0], to[0]) > x + reach || Math.max(from[0], to[0]) < x - reach) return 0;
  if (Math.min(from[1], to[1]) > y + reach || Math.max(from[1], to[1]) < y - reach) return 0;
  if (!runsThrough(box, from, to)) return 0;
  return thick ? COST.thick : COST.thin;
}

function wallsOf(inks: readonly Ink[], of: Draft | undefined): readonly Wall[] {
  return inks.flatMap((ink) =>
    ink.kind === 'text'
      ? []
      : inkLines(ink).map(([from, to]) => ({ from, to, thick: THICK.has(ink.pen), of })),
  );
}

function aired(box: OrientedBox, along: number = AIR, across: number = AIR / 2): OrientedBox {
  return { ...box, halfLength: box.halfLength + along, halfHeight: box.halfHeight + across };
}

function square({ left, right, bottom, top }: Box): OrientedBox {
  return {
    centre: [(left + right) / 2, (bottom + top) / 2],
    along: [1, 0],
    halfLength: (right - left) / 2,
    halfHeight: (top - bottom) / 2,
  };
}

/** Whether a dimension has a line there as well: neighbours in a row share their extension lines. */
function shared(wall: Wall, draft: Draft): boolean {
  return wallsOf(draft.inks, draft).some((own) => liesAlong(own, wall));
}

function crosses(a: Wall, b: Wall): boolean {
  return (
    side(a.from, a.to, b.from) * side(a.from, a.to, b.to) < 0 &&
    side(b.from, b.to, a.from) * side(b.from, b.to, a.to) < 0
  );
}

function side(p: Point, q: Point, r: Point): number {
  return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
}

/** Whether two straights lie on each other for some way: a text beyond its own dimension would seem to be the next one's. */
function liesAlong(a: Wall, b: Wall): boolean {
  const length = distance(a.from, a.to);
  const off = (p: Point) => Math.abs(side(a.from, a.to, p)) / length;
  if (!(length > 0) || off(b.from) > 0.05 || off(b.to) > 0.05) return false;
  const way: Point = [(a.to[0] - a.from[0]) / length, (a.to[1] - a.from[1]) / length];
  const at = (p: Point) => (p[0] - a.from[0]) * way[0] + (p[1] - a.from[1]) * way[1];
  const [b0, b1] = [Math.min(at(b.from), at(b.to)), Math.max(at(b.from), at(b.to))];
  return Math.min(length, b1) - Math.max(0, b0) > 0.1;
}
