import type { Design } from '../../src/design/design.ts';
import { DesignError, misfit, type Problem, roundForReading } from '../../src/design/problem.ts';
import { backwards, mirrorImage } from './chain.ts';
import { edgeRun } from './edgeRun.ts';
import { roundCorner } from './roundCorner.ts';
import { arc, type Chain, line, type Point, type Segment } from './segment.ts';
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
  if (back * backRise < LEAST_BELLY && back !== 0)
    return wrongWay('back', back, f.depthCentre - frontRise, f.depthWing);
  if (front * frontRise < LEAST_BELLY && front !== 0)
    return wrongWay('front', front, f.depthCentre, f.depthWing);
  return { frontMiddle, backMiddle, frontWing: frontMiddle - frontRise, backWing: backMiddle + backRise };
}

/** A shaped edge goes at least this far, mm; less is a straight edge with a sanding error. */
const LEAST_BELLY = 0.2;

function wrongWay(edge: 'front' | 'back', way: number, limit: number, given: number): Problem {
  const allowed =
    way > 0
      ? `at most ${roundForReading(limit - LEAST_BELLY)} mm for an edge that swells out`
      : `at least ${roundForReading(limit + LEAST_BELLY)} mm for an edge that is drawn in`;
  return misfit(
    'footprint.depthWing',
    given,
    allowed,
    `Change the depth at the wings, or where the ${edge} edge goes.`,
  );
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

/** The right half: back edge out to the tip, round it, and the front edge home. */
function withTip(back: Chain, front: Chain, f: Footprint): Chain {
  const halfLength = f.length / 2;
  const home = backwards(front);
  const lastBack = back[back.length - 1] as Segment;
  const firstHome = home[0] as Segment;
  if (f.tip === 'round') {
    const tip = tipRound(back, front, halfLength);
    if (!tip)
      throw new DesignError([
        noRoom('footprint.tip', 'half round', 'the wing’s last straight must be longer than its round'),
      ]);
    return [
      ...back.slice(0, -1),
      { ...lastBack, to: tip.touchBack },
      // in two: the kernel loses the underside's cut where one wall turns through half a circle
      arc(tip.touchBack, [halfLength, tip.centre[1]], tip.centre, 1),
      arc([halfLength, tip.centre[1]], tip.touchFront, tip.centre, 1),
      { ...firstHome, from: tip.touchFront },
      ...home.slice(1),
    ];
  }
  const end = tipEnd(lastBack.to, firstHome.from, f);
  const backCorner = roundCorner(lastBack, end, f.cornerBack);
  if (!backCorner)
    throw new DesignError([
      noRoom('footprint.cornerBack', f.cornerBack, 'a radius that fits between the back edge and the tip'),
    ]);
  const frontCorner = roundCorner(backCorner.after, firstHome, f.cornerFront);
  if (!frontCorner)
    throw new DesignError([
      noRoom('footprint.cornerFront', f.cornerFront, 'a radius that fits between the tip and the front edge'),
    ]);
  return [
    ...back.slice(0, -1),
    backCorner.before,
    backCorner.corner,
    frontCorner.before,
    frontCorner.corner,
    frontCorner.after,
    ...home.slice(1),
  ];
}

/** The end of a wing, back to front, before its corners are rounded: straight, or bowed out to the full length. */
function tipEnd(back: Point, front: Point, f: Footprint): Segment {
  if (f.tip !== 'bowed') return line(back, front);
  const half = (front[1] - back[1]) / 2;
  const radius = (half * half + f.tipBow * f.tipBow) / (2 * f.tipBow);
  const x = f.length / 2 - f.tipBow;
  return arc([x, back[1]], [x, front[1]], [f.length / 2 - radius, (back[1] + front[1]) / 2], 1);
}

function noRoom(path: string, value: number | string, allowed: string): Problem {
  return misfit(path, value, allowed, 'Take a smaller radius, or give the wing more depth or length.');
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
