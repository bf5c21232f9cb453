import type { Design } from '../../src/design/design.ts';
import {
  DesignError,
  misfit,
  type Problem,
  tooLittle,
  tooMuch,
  unfitting,
} from '../../src/design/problem.ts';
import { backwards, mirrorImage } from './chain.ts';
import { edgeRun } from './edgeRun.ts';
import { type RoundedCorner, roundCorner } from './roundCorner.ts';
import { arc, type Chain, LEAST_PIECE, line, type Point, reversed, type Segment } from './segment.ts';
import { tipRound } from './tipRound.ts';

type Footprint = Design['footprint'];

/** y of the four levels that the footprint's depths make, mm. */
export interface Levels {
  readonly frontMiddle: number;
  readonly frontWing: number;
  readonly backMiddle: number;
  readonly backWing: number;
}

/**
 * Where front and back edge lie at the middle and at the wings. One shaped edge takes the whole difference between
 * the two depths; with both shaped, the front takes its belly and the back the rest.
 */
export function levels(f: Footprint): Levels | Problem {
  const excess = f.depthCentre - f.depthWing;
  const back = { straight: 0, tail: 1, soundhole: -1 }[f.backEdge];
  const front = { straight: 0, soundhole: 1, tail: -1 }[f.frontEdge];
  const frontRise = front === 0 ? 0 : back === 0 ? excess : front * f.frontBelly;
  const backRise = back === 0 ? 0 : excess - frontRise;
  const frontMiddle = f.slotBehindFront;
  const backMiddle = frontMiddle - f.depthCentre;
  const least = LEAST_BELLY - 1e-9; // 36 − 35.8 is a little less than 0.2 to a computer
  if (back * backRise < least && back !== 0)
    return wrongWay('back', back, f.depthCentre - frontRise, f.depthWing);
  if (front * frontRise < least && front !== 0) return wrongWay('front', front, f.depthCentre, f.depthWing);
  return { frontMiddle, backMiddle, frontWing: frontMiddle - frontRise, backWing: backMiddle + backRise };
}

/** A shaped edge goes at least this far, mm; less is a straight edge with a sanding error. */
const LEAST_BELLY = 0.2;

function wrongWay(edge: 'front' | 'back', way: number, limit: number, given: number): Problem {
  const remedy = `Change the depth at the wings, or where the ${edge} edge goes.`;
  return way > 0
    ? tooMuch('footprint.depthWing', given, limit - LEAST_BELLY, 'for an edge that swells out', remedy)
    : tooLittle('footprint.depthWing', given, limit + LEAST_BELLY, 'for an edge that is drawn in', remedy);
}

/**
 * The footprint in plan: closed, counter-clockwise, of lines and tangent arcs only, symmetric in x = 0.
 * Throws `DesignError` when corners, sweeps or tips don't fit.
 */
export function outline(f: Footprint): Chain {
  const at = levels(f);
  if ('code' in at) throw new DesignError([at]);
  const halfLength = f.length / 2;
  const shared = { halfLength, fullHalf: f.fullDepthLength / 2, sweep: f.sweepLength, knee: f.knee };
  const back = edgeRun({
    ...shared,
    form: f.backEdge === 'straight' ? 'straight' : f.backForm,
    middle: at.backMiddle,
    wing: at.backWing,
  });
  const front = edgeRun({
    ...shared,
    form: f.frontEdge === 'straight' ? 'straight' : f.frontForm,
    middle: at.frontMiddle,
    wing: at.frontWing,
  });
  const problems = [back, front].filter((r): r is Problem => 'code' in r);
  if (problems.length > 0) throw new DesignError(problems);
  const half = withTip(back as Chain, front as Chain, f);
  return closeMirrored(half);
}

/** The right half: back edge out to the tip, round it, and the front edge home. Throws `DesignError`. */
function withTip(back: Chain, front: Chain, f: Footprint): Chain {
  return f.tip === 'round' ? withRound(back, front, f) : withCorners(back, front, f);
}

function withRound(back: Chain, front: Chain, f: Footprint): Chain {
  const halfLength = f.length / 2;
  const tip = tipRound(back, front, halfLength);
  if (!tip) {
    const allowed = 'straight or bowed tips, or wings whose last piece is longer than their round';
    const remedy = 'Shorten the sweep or the full-depth run, make the wings less deep, or take other tips.';
    throw new DesignError([misfit('footprint.tip', 'half round', allowed, remedy)]);
  }
  const home = backwards(front);
  return [
    ...back.slice(0, -1),
    { ...(back[back.length - 1] as Segment), to: tip.touchBack },
    // in two: the kernel loses the underside's cut where one wall turns through half a circle
    arc(tip.touchBack, [halfLength, tip.centre[1]], tip.centre, 1),
    arc([halfLength, tip.centre[1]], tip.touchFront, tip.centre, 1),
    { ...(home[0] as Segment), from: tip.touchFront },
    ...home.slice(1),
  ];
}

function withCorners(back: Chain, front: Chain, f: Footprint): Chain {
  const tip = tipEnd(back[back.length - 1] as Segment, front[front.length - 1] as Segment, f);
  if ('code' in tip) throw new DesignError([tip]);
  const middle = (tip.end.from[1] + tip.end.to[1]) / 2;
  // a corner that took the middle of a bowed tip would shorten the bridge
  const bowed = f.tip === 'bowed';
  const backCorner = (radius: number): RoundedCorner | undefined => {
    const made = roundCorner(tip.back, tip.end, radius);
    return made && bowed && made.corner.to[1] > middle - LEAST_PIECE ? undefined : made;
  };
  const frontCorner = (radius: number, after: Segment): RoundedCorner | undefined => {
    const made = roundCorner(after, tip.front, radius);
    return made && bowed && made.corner.from[1] < middle + LEAST_PIECE ? undefined : made;
  };
  const remedy = 'Take another radius, or give the wing more depth or length.';
  const first = backCorner(f.cornerBack);
  if (!first) {
    const fits = (r: number) => backCorner(r) !== undefined;
    const why = 'between the back edge and the tip';
    throw new DesignError([unfitting('footprint.cornerBack', f.cornerBack, fits, why, remedy)]);
  }
  const second = frontCorner(f.cornerFront, first.after);
  if (!second) {
    const fits = (r: number) => frontCorner(r, first.after) !== undefined;
    const why = 'between the tip and the front edge';
    throw new DesignError([unfitting('footprint.cornerFront', f.cornerFront, fits, why, remedy)]);
  }
  return [
    ...back.slice(0, -1),
    first.before,
    first.corner,
    second.before,
    second.corner,
    second.after,
    ...backwards(front).slice(1),
  ];
}

/** The end of a wing before its corners are rounded, and the pieces of the two edges that meet it. */
interface TipEnd {
  /** Walks toward +x up to the tip. */
  readonly back: Segment;
  /** Walks from back to front. */
  readonly end: Segment;
  /** Walks away from the tip. */
  readonly front: Segment;
}

/** Most that a tip may bow for each millimetre of half its depth: beyond, it leaves no corner to round. */
const ROUNDEST = 0.8;

/** Straight, or bowed out to the full length from where the edges have come within the bow of it. */
function tipEnd(back: Segment, front: Segment, f: Footprint): TipEnd | Problem {
  const halfLength = f.length / 2;
  const bowed = (bow: number): TipEnd | undefined => {
    const x = halfLength - bow;
    if (x < Math.max(back.from[0], front.from[0]) + LEAST_PIECE) return undefined;
    const [from, to] = [pointOver(back, x), pointOver(front, x)];
    const half = (to[1] - from[1]) / 2;
    if (bow > ROUNDEST * half) return undefined;
    const centre: Point = [halfLength - (half * half + bow * bow) / (2 * bow), from[1] + half];
    const end = bow > 0 ? arc(from, to, centre, 1) : line(from, to);
    return { back: { ...back, to: from }, end, front: reversed({ ...front, to }) };
  };
  const bow = f.tip === 'bowed' ? f.tipBow : 0;
  const remedy = 'Take less bow, or give the wing more depth or length.';
  const why = 'on the last piece of a wing of this depth';
  return bowed(bow) ?? unfitting('footprint.tipBow', bow, (b) => bowed(b) !== undefined, why, remedy);
}

/** Where a segment that walks toward +x passes over x. */
function pointOver(s: Segment, x: number): Point {
  if (s.kind === 'line') {
    const t = (x - s.from[0]) / (s.to[0] - s.from[0]);
    return [x, s.from[1] + t * (s.to[1] - s.from[1])];
  }
  const half = Math.sqrt(Math.max(0, s.radius ** 2 - (x - s.centre[0]) ** 2));
  return [x, s.centre[1] + (s.turn === 1 ? -half : half)];
}

/** Adds the mirror image of a half that runs from (0, back) to (0, front), joining what meets on the centre line. */
function closeMirrored(half: Chain): Chain {
  const other = mirrorImage(half);
  const ahead = joined(half[half.length - 1] as Segment, other[0] as Segment);
  const behind = joined(other[other.length - 1] as Segment, half[0] as Segment);
  return [behind, ...half.slice(1, -1), ahead, ...other.slice(1, -1)];
}

/** Two mirror pieces that meet on the centre line are one line, or one arc: the middle of every edge is level there. */
export function joined(first: Segment, second: Segment): Segment {
  return { ...first, to: second.to };
}
