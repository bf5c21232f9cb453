import { describe, expect, test } from 'vitest';
import { edgeOf } from '../../../models/curves/rim/edgeOf.ts';
import { planOf } from '../../../models/curves/rim/plan.ts';
import { sharpRim } from '../../../models/curves/rim/sharpRim.ts';
import { topOf } from '../../../models/curves/rim/top.ts';
import { rimStretches } from '../../../models/solid/rimStretches.ts';
import { acceptedDesigns } from '../../support/designs.ts';

const rims = acceptedDesigns(80, 4711).accepted.map(({ curves }) => {
  const [plan, top] = [planOf(curves.outline), topOf(curves.profile)];
  const rim = edgeOf(curves.edge, plan, top) ?? sharpRim(plan, top);
  return { kind: curves.edge.kind, plan, top, rim, stretches: rimStretches(rim, plan, top) };
});

test('the sample has every kind of edge', () => {
  expect(new Set(rims.map(({ kind }) => kind))).toEqual(new Set(['none', 'round', 'chamfer']));
});

describe.each(rims.map((r, i) => [`${i} (${r.kind})`, r] as const))('design %s', (_, one) => {
  const { plan, top, rim, stretches } = one;
  const all = Array.from({ length: stretches.count }, (_, i) => i);

  test('stretches follow each other once round the outline', () => {
    for (const i of all)
      expect(stretches.start(i + 1), `after stretch ${i}`).toBeGreaterThan(stretches.start(i));
    expect(stretches.start(stretches.count)).toBeCloseTo(stretches.start(0) + plan.length, 9);
    for (const i of all)
      for (const side of ['top', 'wall'] as const) {
        const [end, start] = [stretches.path(i, side)(1), stretches.path(i + 1, side)(0)];
        const gap = Math.hypot(...end.map((v, d) => v - (start[d] as number)));
        expect(gap, `gap after stretch ${i} on the ${side}, mm`).toBeLessThan(1e-6);
      }
  });

  test('no stretch spans a joint of the outline on the wall, or of the profile on the top', () => {
    const joints = top.joints(0).filter((_, j) => stretches.topJoints.includes(j));
    for (const i of all) {
      const [a, b] = [stretches.start(i), stretches.start(i + 1)];
      const [from, to] = [rim.wallAt(a), rim.wallAt(b)];
      for (const joint of plan.joints) {
        for (const level of [joint - plan.length, joint, joint + plan.length])
          expect(from < level - 1e-3 && to > level + 1e-3, `stretch ${i}, outline at ${joint}`).toBe(false);
      }
      const [left, right] = [stretches.path(i, 'top')(0)[0], stretches.path(i, 'top')(1)[0]].sort(
        (p, q) => p - q,
      ) as [number, number];
      for (const x of joints)
        expect(left < x - 1e-3 && right > x + 1e-3, `stretch ${i}, profile at ${x}`).toBe(false);
    }
  });

  test('each joint of the outline has its stretch on the wall', () => {
    plan.joints.slice(0, -1).forEach((joint, k) => {
      const at = rim.wallAt(stretches.start(stretches.atWallJoint(k)));
      const off = Math.abs(at - joint);
      expect(Math.min(off, Math.abs(off - plan.length)), `joint ${k}`).toBeLessThan(1e-3);
    });
  });
});
