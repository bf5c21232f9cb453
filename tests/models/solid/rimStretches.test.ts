import { describe, expect, test } from 'vitest';
import { planOf } from '../../../models/curves/rim/plan.ts';
import type { Rim } from '../../../models/curves/rim/rim.ts';
import { rimOf } from '../../../models/curves/rim/rimOf.ts';
import { topOf } from '../../../models/curves/rim/top.ts';
import { fitBezier } from '../../../models/kernel/bezier.ts';
import { FIT, SEAM } from '../../../models/kernel/fit.ts';
import { rimStretches } from '../../../models/solid/rimStretches.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { rounded, slab } from '../surface/slab.ts';

const rims = acceptedDesigns(80, 4711).accepted.map(({ curves }) => {
  const [plan, top] = [planOf(curves.outline), topOf(curves.profile)];
  const rim = rimOf(curves.edge, plan, top);
  return { kind: curves.edge.kind, plan, top, rim, stretches: rimStretches(rim, plan, top) };
});

test('the sample has every kind of edge', () => {
  expect(new Set(rims.map(({ kind }) => kind))).toEqual(new Set(['none', 'round', 'chamfer']));
});

/** How densely the rim is looked at here, mm: far more so than the program does. */
const DENSE = 0.05;
/** A joint passed by less than the first may be left out, by more than the second never, mm. */
const GRAZED = [0.009, 0.011] as const;

describe.each(rims.map((r, i) => [`${i} (${r.kind})`, r] as const))('design %s', (_, one) => {
  const { plan, top, rim, stretches } = one;
  const all = Array.from({ length: stretches.count }, (_, i) => i);
  const starts = all.map((i) => stretches.start(i));
  const offStart = (s: number) =>
    Math.min(...starts.flatMap((a) => [-1, 0, 1].map((turn) => Math.abs(a + turn * plan.length - s))));

  // the top's boundary as a walk of its own
  const n = Math.ceil(plan.length / DENSE);
  const step = plan.length / n;
  const xs = Array.from({ length: n + 1 }, (_, k) => rim.across(k * step)(0)[0]);
  const [least, most] = [Math.min(...xs), Math.max(...xs)];

  test('stretches follow each other, each longer than a seam', () => {
    for (const i of all) {
      expect(stretches.start(i + 1) - stretches.start(i), `length of stretch ${i}`).toBeGreaterThan(SEAM);
    }
  });

  test('every joint of the profile that the top’s boundary passes is named, and a stretch starts at each passing', () => {
    top.joints(0).forEach((joint, j) => {
      const inside = Math.min(joint - least, most - joint);
      if (inside < GRAZED[0]) expect(stretches.topJoints, `joint ${j} at ${joint}`).not.toContain(j);
      if (inside < GRAZED[1]) return;
      expect(stretches.topJoints, `joint ${j} at ${joint}`).toContain(j);
      const passed = xs.flatMap((x, k) => {
        const before = xs[k - 1];
        return before !== undefined && before < joint !== x < joint ? [(k - 0.5) * step] : [];
      });
      expect(passed, `passings of joint ${j}`).toHaveLength(2);
      for (const s of passed) {
        expect(offStart(s), `from joint ${j}, passed at ${s} along, to a start`).toBeLessThan(DENSE);
      }
    });
  });

  test('no wall spans a joint of the outline, and each joint has its stretch', () => {
    for (const i of all) {
      const [from, to] = [rim.wallAt(stretches.start(i)), rim.wallAt(stretches.start(i + 1))];
      for (const joint of plan.joints) {
        for (const level of [joint - plan.length, joint, joint + plan.length])
          expect(from < level - 1e-3 && to > level + 1e-3, `stretch ${i}, outline at ${joint}`).toBe(false);
      }
    }
    plan.joints.slice(0, -1).forEach((joint, k) => {
      const off = Math.abs(rim.wallAt(stretches.start(stretches.atWallJoint(k))) - joint);
      expect(Math.min(off, Math.abs(off - plan.length)), `joint ${k}`).toBeLessThan(SEAM);
    });
  });

  test('one Bézier piece follows each stretch', () => {
    for (const i of all) {
      const [from, to] = [stretches.start(i), stretches.start(i + 1)];
      const { off } = fitBezier((t) => {
        const at = rim.across(from + t * (to - from));
        return [0, 0.25, 0.5, 0.75, 1].flatMap((share) => at(share));
      }, FIT.asked);
      // where two bends all but meet there may be a stretch too short to be cut further
      const allowed = to - from > 0.05 ? 5 * FIT.asked : FIT.allowed;
      expect(off, `stretch ${i}, ${to - from} mm from ${from}, strays, mm`).toBeLessThan(allowed);
    }
  });
});

describe('a rim that cannot be cut is refused by name', () => {
  const { outline, profile } = slab(0, 0, 9, { outline: rounded(100, 30, 8) });
  const [plan, top] = [planOf(outline), topOf(profile)];
  const rim = rimOf({ kind: 'none' }, plan, top);

  test('when no wall passes a joint of the outline', () => {
    // a wall that never comes round to where it began
    const short: Rim = { ...rim, wallAt: (s) => Math.min(s, plan.length - 1) };
    expect(() => rimStretches(short, plan, top)).toThrow(/no wall passes joint 0 of the outline/);
  });

  test('when the top passes a joint of its profile more than twice', () => {
    const joints = { ...top, joints: () => [10] };
    // a boundary that swings to and fro over x = 10
    const swinging: Rim = {
      ...rim,
      across: (s) => () => [10 + 5 * Math.sin((3 * 2 * Math.PI * s) / plan.length), 0, 9],
    };
    expect(() => rimStretches(swinging, plan, joints)).toThrow(/joint 0 of its profile [3-7] times/);
  });
});
