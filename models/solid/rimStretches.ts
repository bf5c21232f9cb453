import { passings } from '../curves/rim/passings.ts';
import type { Plan } from '../curves/rim/plan.ts';
import type { Rim } from '../curves/rim/rim.ts';
import type { Top } from '../curves/rim/top.ts';
import { fitBezier } from '../kernel/bezier.ts';
import { FIT, SEAM } from '../kernel/fit.ts';
import { KernelError } from '../kernel/kernelError.ts';
import type { Path } from '../kernel/recognised.ts';

/** The rim in stretches, each so smooth that one Bézier piece follows it, numbered round the outline. */
export interface Stretches {
  readonly count: number;
  /** Where a stretch begins, mm along the outline; counting on past the last goes round once more. */
  start(stretch: number): number;
  /** Where a stretch leaves the top, or where it meets the wall. */
  path(stretch: number, side: 'top' | 'wall'): Path;
  /** The stretch at whose start the wall passes the outline's joint `k`. */
  atWallJoint(k: number): number;
  /** Which of the profile's joints the top's boundary passes, on the front and on the back, by number from the left. */
  readonly topJoints: readonly number[];
}

/**
 * Starts nearer to each other than this are one, mm: what lies between them would be lost in the seam, and what is
 * moved by no more than a seam is still sewn.
 */
const ONE = SEAM;
/** A joint that the top's boundary passes by less than this is left to the piece inside it, mm. */
const GRAZING = 0.01;
/** A stretch shorter than this is cut no further, mm: a hundred seams. */
const SHORT = 100 * SEAM;
/** Walking step in search of passings, mm. */
const STEP = 0.5;

interface Start {
  s: number;
  readonly topJoints: number[];
  readonly wallJoints: number[];
}

/**
 * Cuts the rim where it bends, where its line on the top passes a joint of the profile, where its line on the wall
 * passes a joint of the outline, and wherever one Bézier piece would stray. Throws `KernelError` when the wall misses a
 * joint of the outline, or the top's boundary passes one of the profile other than once on the front and once on the back.
 */
export function rimStretches(rim: Rim, plan: Plan, top: Top): Stretches {
  const topJoints = jointsInReach(rim, plan, top);
  const breaks = [...rim.breaks, ...plan.joints].map((s) => ({ s }));
  const passed = [...passedOnTop(rim, plan, top, topJoints), ...passedOnWall(rim, plan)];
  const starts = gathered([...breaks, ...passed], plan).flatMap((start, i, all) => {
    const end = all[i + 1]?.s ?? (all[0] as Start).s + plan.length;
    return [start, ...halved(rim, start.s, end).map((s): Start => ({ s, topJoints: [], wallJoints: [] }))];
  });
  for (const j of topJoints) {
    const times = starts.filter((start) => start.topJoints.includes(j)).length;
    if (times !== 2) throw new KernelError('body', `the top passes joint ${j} of its profile ${times} times`);
  }
  const wallStarts = plan.pieces.map((_, k) => {
    const found = starts.findIndex(({ wallJoints }) => wallJoints.includes(k));
    if (found < 0) throw new KernelError('body', `no wall passes joint ${k} of the outline`);
    return found;
  });
  const count = starts.length;
  const start = (i: number) => {
    const turns = Math.floor(i / count);
    return (starts[i - turns * count] as Start).s + turns * plan.length;
  };
  return {
    count,
    start,
    path: (i, side) => {
      const [from, to] = [start(i), start(i + 1)];
      const share = side === 'top' ? 0 : 1;
      return (t) => rim.across(from + t * (to - from))(share);
    },
    atWallJoint: (k) => wallStarts[k] as number,
    topJoints,
  };
}

interface Passing {
  readonly s: number;
  readonly topJoint?: number;
  readonly wallJoint?: number;
}

/** Places so near to each other that nothing is passed twice between two of them, but what is only grazed. */
function walkOf(plan: Plan): readonly number[] {
  const walk = plan.joints.slice(1).flatMap((to, i) => {
    const from = plan.joints[i] as number;
    const n = Math.max(8, Math.ceil((to - from) / STEP));
    return Array.from({ length: n }, (_, k) => from + ((to - from) * k) / n);
  });
  return [...walk, plan.length];
}

const topX = (rim: Rim) => (s: number) => rim.across(s)(0)[0];

/** The profile's joints between the ends of the top's boundary, by number from the left; not those it only grazes. */
function jointsInReach(rim: Rim, plan: Plan, top: Top): readonly number[] {
  const xs = walkOf(plan).map(topX(rim));
  const [least, most] = [Math.min(...xs) + GRAZING, Math.max(...xs) - GRAZING];
  return top.joints(0).flatMap((x, j) => (x > least && x < most ? [j] : []));
}

function passedOnTop(rim: Rim, plan: Plan, top: Top, topJoints: readonly number[]): readonly Passing[] {
  const at = passings(topX(rim), walkOf(plan));
  const joints = top.joints(0);
  return topJoints.flatMap((topJoint) => at(joints[topJoint] as number).map((s) => ({ s, topJoint })));
}

function passedOnWall(rim: Rim, plan: Plan): readonly Passing[] {
  const at = passings(rim.wallAt, walkOf(plan));
  return plan.joints.slice(0, -1).flatMap((joint, wallJoint) =>
    // near the outline's start the wall may stand just before it, or just past its end
    [joint, joint + plan.length].flatMap((level) => at(level).map((s) => ({ s, wallJoint }))),
  );
}

/** The starts in order, those that all but coincide made one: at the outline's joint, if one is among them. */
function gathered(passed: readonly Passing[], plan: Plan): readonly Start[] {
  const isJoint = (s: number) => plan.joints.some((joint) => Math.abs(joint - s) < 1e-9);
  const starts: Start[] = [];
  // the outline starts at a joint: what lies just before its end belongs there
  const turned = passed.map((p) => (p.s > plan.length - ONE ? { ...p, s: 0 } : p));
  for (const { s, topJoint, wallJoint } of turned.sort((a, b) => a.s - b.s)) {
    let start = starts[starts.length - 1];
    if (!start || s - start.s > ONE) {
      start = { s, topJoints: [], wallJoints: [] };
      starts.push(start);
    } else if (isJoint(s)) start.s = s;
    if (topJoint !== undefined) start.topJoints.push(topJoint);
    if (wallJoint !== undefined) start.wallJoints.push(wallJoint);
  }
  return starts;
}

/** Places at which a stretch must be cut so that a Bézier piece follows each part. */
function halved(rim: Rim, from: number, to: number): readonly number[] {
  const band = (t: number) => {
    const at = rim.across(from + t * (to - from));
    return [...at(0), ...at(0.5), ...at(1)];
  };
  if (to - from < SHORT || fitBezier(band, FIT.asked).off < 3 * FIT.asked) return [];
  const middle = (from + to) / 2;
  return [...halved(rim, from, middle), middle, ...halved(rim, middle, to)];
}
