import { crossings } from '../../../models/curves/chain.ts';
import type { Channel, Curves, Pin, Profile, Slot } from '../../../models/curves/curves.ts';
import { type Chain, directionAt, line, type Point, type Segment } from '../../../models/curves/segment.ts';
import { slotFloor, slotToPart } from '../../../models/curves/slot.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import type { DesignText } from '../../design/design.ts';
import { offsetInward } from './offsetInward.ts';
import { bothSides, type LongEdge, outlinePieces } from './outlinePieces.ts';
import { pinRadii } from './pinRadii.ts';
import { circle, type Pen, type Shape, type ShapeName } from './shape.ts';

/** How far chain lines run on past what they centre, mm. */
const PAST = 1.5;
/** Tangent lines stop short of the outline, mm: they mark a change of surface, not an edge. */
const SHORT = 0.6;

/** The bridge from above, +y (the nut) up. */
export function planShapes(curves: Curves, text: DesignText): readonly Shape[] {
  const { outline, edge, slot } = curves;
  const shape = (name: ShapeName, pen: Pen, chain: Chain, closed = false): Shape => ({
    name,
    view: 'plan',
    pen,
    chain,
    closed,
  });
  const rim = edge.kind === 'none' ? outline : offsetInward(outline, edge.size);
  const pose = { angle: slot.angle, across: Math.cos(slot.tilt) };
  return [
    ...blockEnds(curves, rim).map((chain) => shape('blockEnds', 'detail', chain)),
    ...(edge.kind === 'none' ? [] : [shape('topEdge', 'detail', rim, true)]),
    shape('centreLine', 'chain', [centreLine(outline)]),
    { ...shape('slotAxis', 'chain', [slotAxis(curves)]), pose },
    ...pinRows(curves.pins).map((row) => shape('pinLine', 'chain', [pinLine(row)])),
    ...curves.channels.map((c) => shape('channels', 'detail', channelSides(c, curves))),
    { ...shape('slot', 'detail', slotInWood(curves), true), pose },
    ...curves.pins.flatMap((pin) => {
      const { drill, surface } = pinRadii(pin);
      const mouth = surface > drill + 1e-6 ? [shape('mouths', 'detail', circle(pin.at, surface), true)] : [];
      return [...mouth, shape('drills', 'detail', circle(pin.at, drill), true)];
    }),
    shape('body', 'outline', outline, true),
    ...pieces(curves, text).map(([name, chain]) => shape(name, 'none', chain)),
  ];
}

/** The outline's pieces by their names, to be lit up. */
function pieces(curves: Curves, text: DesignText): readonly (readonly [ShapeName, Chain])[] {
  const { front, back, tip, frontCorner, backCorner } = outlinePieces(curves.outline, text);
  const named = (name: ShapeName, found: readonly (Segment | undefined)[]) =>
    found.flatMap((s) => (s ? bothSides(s) : [])).map((chain) => [name, chain] as const);
  const middles = [front.pieces[0], back.pieces[0]].filter((s) => s !== undefined);
  return [
    ...named('tips', tip),
    ...named('frontCorners', [frontCorner]),
    ...named('backCorners', [backCorner]),
    ...middles.map((s) => ['fullDepth', [s]] as const),
    ...named('frontEdge', front.pieces),
    ...named('backEdge', back.pieces),
    ...named('sweeps', [front, back].flatMap(sweepArcs)),
    ...named('knees', [front, back].flatMap(kneeArcs)),
  ];
}

const arcsOf = (edge: LongEdge): Chain => edge.pieces.filter((s) => s.kind === 'arc');
const sweepArcs = (edge: LongEdge): Chain => (edge.form === 'sweep' ? arcsOf(edge) : []);
const kneeArcs = (edge: LongEdge): Chain => (edge.form === 'taper' ? arcsOf(edge).slice(0, 1) : []);

/** y of each place where a closed chain crosses the upright at x, from back to front, mm. */
export function crossingsAt(chain: Chain, x: number): readonly number[] {
  const swap = ([a, b]: Point): Point => [b, a];
  const swapped = chain.map((s): Segment => {
    const ends = { from: swap(s.from), to: swap(s.to) };
    return s.kind === 'line'
      ? { ...s, ...ends }
      : { ...s, ...ends, centre: swap(s.centre), turn: s.turn === 1 ? -1 : 1 };
  });
  return swapped.flatMap((s) => crossings(s, x)).sort((a, b) => a - b);
}

function centreLine(outline: Chain): Segment {
  const ys = crossingsAt(outline, 0);
  return line([0, (ys[0] ?? 0) - PAST], [0, (ys[ys.length - 1] ?? 0) + PAST]);
}

/** Where the crown ends and where the wing's run begins, across the part. */
function blockEnds({ profile }: Curves, rim: Chain): readonly Chain[] {
  return [profile.crownEnd, profile.runStart]
    .flatMap((x) => [-x, x])
    .flatMap((x) => {
      const ys = crossingsAt(rim, x);
      const [low, high] = [ys[0], ys[ys.length - 1]];
      if (low === undefined || high === undefined || high - low < 3 * SHORT) return [];
      return [[line([x, low + SHORT], [x, high - SHORT])]];
    });
}

function slotAxis({ slot, profile }: Curves): Segment {
  const end = (slot.roundEnds ? slot.halfLength : openEnd(slot, profile)) + PAST;
  return line([-end, 0], [end, 0]);
}

/** The slot's plan in its own frame, as far as there is wood round it. */
function slotInWood({ slot, profile }: Curves): Chain {
  if (slot.roundEnds) return slot.plan;
  const [u, v] = [openEnd(slot, profile), slot.width / 2];
  const [a, b, c, d]: readonly [Point, Point, Point, Point] = [
    [-u, -v],
    [u, -v],
    [u, v],
    [-u, v],
  ];
  return [line(a, b), line(b, c), line(c, d), line(d, a)];
}

/** Where an open slot's floor comes out of the wood between block and wing, mm along the slot. */
function openEnd(slot: Slot, profile: Profile): number {
  const over = (u: number): number => {
    const [x, , z] = slotToPart(slot, profile.thickness, u, 0, slotFloor(slot, u));
    return topHeight(profile, x) - z;
  };
  return lastWith((u) => over(u) > 0, slot.halfLength);
}

/** The pins by the rows they stand in: one, or two if every second stands back. */
function pinRows(pins: readonly Pin[]): readonly (readonly Pin[])[] {
  const [a, b, c] = pins.map(({ at }) => at);
  if (!a || !b || !c) return [pins];
  const aside = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  if (Math.abs(aside) < 1e-6) return [pins];
  return [0, 1].map((row) => pins.filter((_, i) => i % 2 === row));
}

function pinLine(pins: readonly Pin[]): Segment {
  const [first, last] = [pins[0] as Pin, pins[pins.length - 1] as Pin];
  const [dx, dy] = directionAt(line(first.at, last.at), 0);
  const on = (pin: Pin, way: 1 | -1): Point => {
    const l = way * (pin.reach + PAST);
    return [pin.at[0] + l * dx, pin.at[1] + l * dy];
  };
  return line(on(first, -1), on(last, 1));
}

/** A channel's two sides and its end, from the hole's edge to where its floor comes out of the crown. */
function channelSides(channel: Channel, { pins, profile }: Curves): Chain {
  const { at, direction, width } = channel;
  const pin = pins.find((p) => p.at[0] === at[0] && p.at[1] === at[1]);
  const hole = pin ? pinRadii(pin).surface : 0;
  const half = width / 2;
  const place = (s: number, aside: number): Point => [
    at[0] + s * direction[0] - aside * direction[1],
    at[1] + s * direction[1] + aside * direction[0],
  ];
  const start = Math.sqrt(Math.max(0, hole ** 2 - half ** 2));
  const end = comesOut(channel, (s) => topHeight(profile, place(s, 0)[0]));
  const corners = [place(start, half), place(end, half), place(end, -half), place(start, -half)] as const;
  return [line(corners[0], corners[1]), line(corners[1], corners[2]), line(corners[2], corners[3])];
}

/** Where a ramp's floor meets the surface over it, mm from the pin. */
function comesOut({ outline, reach }: Channel, top: (s: number) => number): number {
  const [from, to] = [outline[0] as Point, outline[1] as Point];
  const floor = (s: number): number => from[1] + ((to[1] - from[1]) * s) / (to[0] - from[0]);
  return lastWith((s) => floor(s) < top(s), reach);
}

/** The largest number up to `most` for which something holds that holds at 0 and, once it ends, holds no more. */
function lastWith(holds: (n: number) => boolean, most: number): number {
  let [low, high] = [0, most];
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}
