import { channelSides } from '../../../models/curves/channelSides.ts';
import { crossingsAt } from '../../../models/curves/crossingsAt.ts';
import type { Curves, Pin } from '../../../models/curves/curves.ts';
import { offsetInward } from '../../../models/curves/offsetInward.ts';
import { openEnd } from '../../../models/curves/openEnd.ts';
import { bothSides, type LongEdge, outlinePieces } from '../../../models/curves/outlinePieces.ts';
import { pinRadii } from '../../../models/curves/pinRadii.ts';
import { pinRows } from '../../../models/curves/pinRows.ts';
import { type Chain, directionAt, line, type Point, type Segment } from '../../../models/curves/segment.ts';
import type { DesignText } from '../../design/design.ts';
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

function pinLine(pins: readonly Pin[]): Segment {
  const [first, last] = [pins[0] as Pin, pins[pins.length - 1] as Pin];
  const [dx, dy] = directionAt(line(first.at, last.at), 0);
  const on = (pin: Pin, way: 1 | -1): Point => {
    const l = way * (pin.reach + PAST);
    return [pin.at[0] + l * dx, pin.at[1] + l * dy];
  };
  return line(on(first, -1), on(last, 1));
}
