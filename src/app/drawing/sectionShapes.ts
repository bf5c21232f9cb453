import { backwards } from '../../../models/curves/chain.ts';
import { crossingsAt } from '../../../models/curves/crossingsAt.ts';
import type { Channel, Curves, Holes, Pin } from '../../../models/curves/curves.ts';
import { holeRadius } from '../../../models/curves/holeRadius.ts';
import { arc, type Chain, line, type Point, pointAt, type Segment } from '../../../models/curves/segment.ts';
import { slotFloor } from '../../../models/curves/slot.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import type { Pen, Shape, ShapeName } from './shape.ts';

/** A pin this near to x = 0 is cut by the section, mm. */
const CUT = 1e-6;

/** The section at x = 0, through the slot's middle: y (toward the nut) to the right, z up; its holes as they stand. */
export function sectionShapes(curves: Curves, holes: Holes): readonly Shape[] {
  const shape = (name: ShapeName, pen: Pen, chain: Chain, closed = false): Shape => ({
    name,
    view: 'section',
    pen,
    chain,
    closed,
  });
  const notch = slotNotch(curves);
  const pin = nearestPin(curves.pins);
  const isCut = Math.abs(pin.at[0]) < CUT;
  const floor = belowSection(curves);
  const { thickness } = curves.profile;
  const hole = holeSides(pin, holes, curves);
  const ramp = curves.channels[curves.pins.indexOf(pin)];
  const over = sectionTop(curves, notch);
  const bodies = isCut
    ? around(floor, over, [hole[0], ramp ? withRamp(hole[1], ramp, thickness) : hole[1]], thickness)
    : [closedBody(floor, over)];
  const [left, bottom, right] = notch;
  const axis = line([pin.at[1], thickness + 1.5], [pin.at[1], floor.from[1] - 1.5]);
  return [
    ...bodies.map((chain) => shape('body', 'outline', chain, true)),
    shape('pinLine', 'chain', [axis]),
    ...(isCut ? [] : hole.map((side) => shape('mouths', 'hidden', side))),
    shape('slotWalls', 'none', [left]),
    shape('slotWalls', 'none', [right]),
    shape('slotFloor', 'none', [bottom]),
    shape('underside', 'none', [floor]),
  ];
}

/** Left wall, floor and right wall of the slot in the plane x = 0, walked from left to right. */
export function slotNotch({ slot, profile }: Curves): readonly [Segment, Segment, Segment] {
  const [c, s] = [Math.cos(slot.tilt), Math.sin(slot.tilt)];
  const half = slot.width / 2;
  const at = (v: number, w: number): Point => [
    (v * c - w * s) / Math.cos(slot.angle),
    profile.thickness + v * s + w * c,
  ];
  // the plane x = 0 leaves the slot's own middle as it goes down a leaning wall
  const low = (v: number): Point => {
    const u = (v * c + slot.depth * s) * Math.tan(slot.angle);
    return at(v, slotFloor(slot, u));
  };
  const high = (v: number): Point => at(v, (-v * s) / c);
  return [line(high(-half), low(-half)), line(low(-half), low(half)), line(low(half), high(half))];
}

/** Back and front of the section, y in mm. */
export function sectionEnds({ outline }: Curves): readonly [number, number] {
  const ys = crossingsAt(outline, 0);
  return [ys[0] ?? 0, ys[ys.length - 1] ?? 0];
}

function nearestPin(pins: readonly Pin[]): Pin {
  return pins.reduce((best, p) => (Math.abs(p.at[0]) < Math.abs(best.at[0]) ? p : best));
}

function belowSection(curves: Curves): Segment {
  const [back, front] = sectionEnds(curves);
  const face = curves.underside;
  const z = (y: number) => undersideHeight(face, 0, y);
  return face.shape === 'sphere'
    ? arc([back, z(back)], [front, z(front)], [0, -face.radius], -1)
    : line([back, z(back)], [front, z(front)]);
}

/** The top from back to front: edge, level crown, slot, level crown, edge. */
function sectionTop(curves: Curves, notch: readonly [Segment, Segment, Segment]): Chain {
  const [back, front] = sectionEnds(curves);
  const { edge, profile } = curves;
  const z = profile.thickness;
  const by = edge.kind === 'none' ? 0 : edge.size;
  const start: Chain = [line([back + by, z], notch[0].from), ...notch, line(notch[2].to, [front - by, z])];
  if (edge.kind === 'none') return start;
  const [low, high]: readonly [Point, Point] = [
    [back, z - by],
    [front, z - by],
  ];
  const before: Segment =
    edge.kind === 'round' ? arc(low, [back + by, z], [back + by, z - by], -1) : line(low, [back + by, z]);
  const after: Segment =
    edge.kind === 'round'
      ? arc([front - by, z], high, [front - by, z - by], -1)
      : line([front - by, z], high);
  return [before, ...start, after];
}

function closedBody(floor: Segment, over: Chain): Chain {
  const [first, last] = [over[0] as Segment, over[over.length - 1] as Segment];
  return [floor, line(floor.to, last.to), ...backwards(over), line(first.from, floor.from)];
}

/** Both walls of a pin hole within the wood, each from the bottom up: the side toward the back, then toward the front. */
function holeSides(pin: Pin, holes: Holes, curves: Curves): readonly [Chain, Chain] {
  const top = curves.profile.thickness;
  const outline = pin.outline[holes];
  const wall = outline.filter(([r]) => r > 0);
  const radiusAt = (z: number): number => holeRadius(outline, z);
  const side = (way: 1 | -1): Chain => {
    const foot = radiusAt(undersideHeight(curves.underside, 0, pin.at[1]));
    // each side ends on the glue face where it meets it: a dome is lower at the side toward the tail
    const bottom = undersideHeight(curves.underside, 0, pin.at[1] + way * foot);
    const on = [[foot, bottom], ...wall.filter(([, z]) => z > bottom && z < top), [radiusAt(top), top]].map(
      ([r = 0, z = 0]): Point => [pin.at[1] + way * r, z],
    );
    return on.slice(1).map((p, i) => line(on[i] as Point, p));
  };
  return [side(-1), side(1)];
}

/**
 * A hole's front wall up to where the string channel opens it, the channel's floor, and its side where it runs out of
 * the plane x = 0 before it comes out of the wood.
 */
function withRamp(wall: Chain, channel: Channel, thickness: number): Chain {
  const [start, end] = [channel.outline[0] as Point, channel.outline[1] as Point];
  const [dx, dy] = channel.direction;
  const rise = (dy * (end[1] - start[1])) / (end[0] - start[0]);
  const floor = (y: number): number => start[1] + rise * (y - channel.at[1]);
  const over = ([y, z]: Point): number => z - floor(y);
  const i = wall.findIndex((s) => over(s.to) > 0);
  const cut = wall[i];
  if (!cut) return wall;
  const crossing = (s: Segment): Point => pointAt(s, over(s.from) / (over(s.from) - over(s.to)));
  const meet = crossing(cut);
  // a bevel flatter than the ramp comes out under it again, and goes on to the top
  const flatter = wall.findIndex((s, k) => k > i && over(s.to) < 0);
  if (flatter > 0) {
    const under = wall[flatter] as Segment;
    const again = crossing(under);
    return [
      ...wall.slice(0, i),
      line(cut.from, meet),
      line(meet, again),
      line(again, under.to),
      ...wall.slice(flatter + 1),
    ];
  }
  const comesOut = channel.at[1] + (thickness - start[1]) / rise;
  const runsOut = dx === 0 ? Number.POSITIVE_INFINITY : channel.at[1] + channel.width / 2 / Math.abs(dx);
  // it leaves the plane inside the hole
  if (runsOut <= meet[0]) return wall;
  const y = Math.min(comesOut, runsOut);
  const far: Point = [y, floor(y)];
  const side = runsOut < comesOut ? [line(far, [y, thickness])] : [];
  return [...wall.slice(0, i), line(cut.from, meet), line(meet, far), ...side];
}

/** The two bodies that a hole through the section leaves: behind it, and before it. */
function around(
  floor: Segment,
  over: Chain,
  [behind, before]: readonly [Chain, Chain],
  thickness: number,
): readonly Chain[] {
  const foot = (side: Chain): Point => (side[0] as Segment).from;
  const head = (side: Chain): Point => (side[side.length - 1] as Segment).to;
  // the hole comes up through the level run between the back edge and the slot
  const i = over.findIndex((s) => s.kind === 'line' && s.from[1] === thickness && s.to[0] >= head(before)[0]);
  const run = over[i] as Segment;
  return [
    closedBody({ ...floor, to: foot(behind) }, [...over.slice(0, i), { ...run, to: head(behind) }]),
    closedBody({ ...floor, from: foot(before) }, [{ ...run, from: head(before) }, ...over.slice(i + 1)]),
  ].map((body, n) =>
    n === 0 ? withWall(body, behind, 1) : withWall(body, backwards(before), body.length - 1),
  );
}

/** A body whose straight side at `index` is replaced by a hole's wall. */
function withWall(body: Chain, wall: Chain, index: number): Chain {
  return [...body.slice(0, index), ...wall, ...body.slice(index + 1)];
}
