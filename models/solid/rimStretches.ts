import type { Plan } from '../curves/rim/plan.ts';
import type { Rim } from '../curves/rim/rim.ts';
import type { Top } from '../curves/rim/top.ts';
import { fitBezier } from '../kernel/bezier.ts';
import { FIT } from '../kernel/fit.ts';
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

/** Starts nearer to each other than this are one, mm: no tool shows it. */
const ONE = 2e-4;
/** A joint that the top's boundary passes by less than this is left to the piece inside it, mm. */
const GRAZING = 0.01;
/** A stretch shorter than this is cut no further, mm. */
const SHORT = 0.02;
/** Walking step in search of passings, mm. */
const STEP = 0.5;

interface Start {
  s: number;
  readonly topJoints: number[];
  readonly wallJoints: number[];
}

/**
 * Cuts the rim where it bends, where its line on the top passes a joint of the profile, where its line on the wall
 * passes a joint of the outline, and wherever one Bézier piece would stray.
 */
export function rimStretches(rim: Rim, plan: Plan, top: Top): Stretches {
  const { passings, topJoints } = passingsOf(rim, plan, top);
  const breaks = [...rim.breaks, ...plan.joints].map((s) => ({ s }));
  const starts = gathered([...breaks, ...passings], plan).flatMap((start, i, all) => {
    const end = all[i + 1]?.s ?? (all[0] as Start).s + plan.length;
    return [start, ...halved(rim, start.s, end).map((s): Start => ({ s, topJoints: [], wallJoints: [] }))];
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
    atWallJoint: (k) => starts.findIndex(({ wallJoints }) => wallJoints.includes(k)),
    topJoints: topJoints.filter((j) => starts.filter((n) => n.topJoints.includes(j)).length === 2),
  };
}

interface Passing {
  readonly s: number;
  readonly topJoint?: number;
  readonly wallJoint?: number;
}

/** Where the rim's line on the top passes the profile's joints, and its line on the wall the outline's. */
function passingsOf(rim: Rim, plan: Plan, top: Top) {
  const walk = plan.joints.slice(1).flatMap((to, i) => {
    const from = plan.joints[i] as number;
    const n = Math.max(8, Math.ceil((to - from) / STEP));
    return Array.from({ length: n }, (_, k) => from + ((to - from) * k) / n);
  });
  walk.push(plan.length);
  const topX = (s: number) => rim.across(s)(0)[0];
  const xs = walk.map(topX);
  const [least, most] = [Math.min(...xs) + GRAZING, Math.max(...xs) - GRAZING];
  const joints = top.joints(0);
  const topJoints = joints
    .map((_, j) => j)
    .filter((j) => {
      const x = joints[j] as number;
      return x > least && x < most;
    });
  const passings: Passing[] = topJoints.flatMap((topJoint) =>
    passed(topX, xs, walk, joints[topJoint] as number).map((s) => ({ s, topJoint })),
  );
  const walls = walk.map(rim.wallAt);
  plan.joints.slice(0, -1).forEach((joint, wallJoint) => {
    // near the outline's start the wall may stand just before it, or just past its end
    for (const level of [joint, joint + plan.length]) {
      passings.push(...passed(rim.wallAt, walls, walk, level).map((s) => ({ s, wallJoint })));
    }
  });
  return { passings, topJoints };
}

/** Where a function passes a level between the places it was sampled at, by halving. */
function passed(
  f: (s: number) => number,
  samples: readonly number[],
  walk: readonly number[],
  level: number,
): readonly number[] {
  return samples.slice(1).flatMap((after, i) => {
    const below = (samples[i] as number) < level;
    if (below === after < level) return [];
    let [a, b] = [walk[i] as number, walk[i + 1] as number];
    while (b - a > 1e-11) {
      const middle = (a + b) / 2;
      if (f(middle) < level === below) a = middle;
      else b = middle;
    }
    return [b];
  });
}

/** The starts in order, those that all but coincide made one: at the outline's joint, if one is among them. */
function gathered(passings: readonly Passing[], plan: Plan): readonly Start[] {
  const isJoint = (s: number) => plan.joints.some((joint) => Math.abs(joint - s) < 1e-9);
  const starts: Start[] = [];
  // the outline starts at a joint: what lies just before its end belongs there
  const turned = passings.map((p) => (p.s > plan.length - ONE ? { ...p, s: 0 } : p));
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
