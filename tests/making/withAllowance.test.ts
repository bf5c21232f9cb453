import { describe, expect, test } from 'vitest';
import { holeRadius } from '../../models/curves/holeRadius.ts';
import { levels } from '../../models/curves/outline.ts';
import type { Chain } from '../../models/curves/segment.ts';
import { slotFloor, slotToPart } from '../../models/curves/slot.ts';
import { topHeight } from '../../models/curves/topHeight.ts';
import { STARTER_FILES } from '../../src/cli/starterFiles.ts';
import { type AcceptedDesign, acceptDesign } from '../../src/design/acceptDesign.ts';
import { DesignError } from '../../src/design/problem.ts';
import { holeCuts } from '../../src/making/holes.ts';
import { withAllowance } from '../../src/making/withAllowance.ts';
import { designText, thrown } from '../support/change.ts';
import { acceptedDesigns } from '../support/designs.ts';

const starters = STARTER_FILES.map(({ json }) => acceptDesign(json));
const leaning = acceptDesign(designText({ 'saddle.tilt': 10, 'saddle.angle': 6 }));

/** The same with the allowance, or undefined where it can't carry it. */
function carried(accepted: AcceptedDesign, a: number): AcceptedDesign | undefined {
  try {
    return withAllowance(accepted, a);
  } catch (error) {
    if (error instanceof DesignError) return undefined;
    throw error;
  }
}

const all = [...starters, leaning, ...acceptedDesigns(40, 11).accepted].flatMap((finished) => {
  const raised = carried(finished, 0.3);
  return raised ? [{ name: finished.design.guitar.name, finished, raised }] : [];
});

/** How far outline and pins move in y so that a leaning slot stays where it is in the wood. */
const moved = ({ curves: { slot } }: AcceptedDesign) => (0.3 * Math.tan(slot.tilt)) / Math.cos(slot.angle);

const points = (chain: Chain, dy: number) => chain.map(({ from: [x, y] }) => [x, y + dy]);

function expectNear(
  found: readonly (readonly number[])[],
  wanted: readonly (readonly number[])[],
  by = 1e-6,
) {
  expect(found).toHaveLength(wanted.length);
  for (const [i, p] of found.entries())
    for (const [k, one] of p.entries())
      expect(Math.abs(one - (wanted[i]?.[k] as number)), `point ${i}`).toBeLessThan(by);
}

test('nearly every design carries it', () => {
  expect(all.length).toBeGreaterThan(40);
  for (const one of [...starters, leaning]) expect(carried(one, 0.5), one.design.guitar.name).toBeDefined();
});

describe('0.3 mm left for sanding', () => {
  test('raises the whole top by that, upright, and nothing else of its curve', () => {
    for (const { finished, raised } of all) {
      const [was, is] = [finished.curves.profile, raised.curves.profile];
      // a dome's height at the tips depends on where the outline lies on it: microns
      expectNear(points(is.chain, 0), points(was.chain, 0.3), 1e-3);
      expect(is.thickness).toBeCloseTo(was.thickness + 0.3, 9);
      expect(is.crownRadius).toBeCloseTo(was.crownRadius, 6);
      expect(raised.curves.underside).toEqual(finished.curves.underside);
      expect(raised.curves.edge).toEqual(finished.curves.edge);
    }
  });

  test('leaves outline and pins beside a slot that stays in the wood', () => {
    for (const { name, finished, raised } of all) {
      const dy = moved(finished);
      expectNear(points(raised.curves.outline, 0), points(finished.curves.outline, dy));
      expectNear(
        raised.curves.pins.map(({ at }) => at),
        finished.curves.pins.map(({ at: [x, y] }) => [x, y + dy]),
      );
      const edges = [finished, raised].map(({ design }) => levels(design.footprint));
      expect(
        edges.every((one) => !('code' in one)),
        name,
      ).toBe(true);
    }
  });

  test('leaves the slot’s middle, its walls and its floor where they are', () => {
    for (const { name, finished, raised } of all) {
      const dy = moved(finished);
      const { slot, profile } = finished.curves;
      const { slot: after, profile: top } = raised.curves;
      expect([after.angle, after.tilt, after.width]).toEqual([slot.angle, slot.tilt, slot.width]);
      for (const u of [-20, 0, 20]) {
        const floor = slotFloor(slot, u);
        const [x, y, z] = slotToPart(slot, profile.thickness, u, 0, floor);
        const at = slotToPart(after, top.thickness, u, 0, slotFloor(after, u));
        // across the slot and in height; along it the ends may slide by 0.02 mm
        const [ex, ey] = [at[0] - x, at[1] - dy - y];
        const across = -ex * Math.sin(slot.angle) + ey * Math.cos(slot.angle);
        expect(Math.abs(across), `${name} across at ${u}`).toBeLessThan(1e-6);
        expect(Math.abs(at[2] - z), `${name} floor at ${u}`).toBeLessThan(1e-6);
        expect(Math.hypot(ex, ey), `${name} along at ${u}`).toBeLessThan(0.02);
      }
    }
  });

  test('leaves every hole as it is under its bevel', () => {
    for (const { name, finished, raised } of all) {
      const { foot } = holeCuts(finished.design);
      for (const [i, pin] of finished.curves.pins.entries()) {
        const after = raised.curves.pins[i] as typeof pin;
        for (const holes of ['drilled', 'reamed'] as const)
          for (const under of [foot, foot + 1, foot + 4]) {
            const [was, is] = [pin, after].map((one) => holeRadius(one.outline[holes], pin.top - under));
            expect(Math.abs((was as number) - (is as number)), `${name} ${holes} −${under}`).toBeLessThan(
              1e-6,
            );
          }
      }
    }
  });

  test('leaves a channel its floor', () => {
    const channelled = all.filter(({ finished }) => finished.curves.channels.length > 0);
    expect(channelled.length).toBeGreaterThan(0);
    for (const { name, finished, raised } of channelled)
      for (const [i, channel] of finished.curves.channels.entries()) {
        const floors = [channel, raised.curves.channels[i] as typeof channel].map(({ outline }) => {
          const [[, start], [reach, end]] = outline as [[number, number], [number, number]];
          return [start, start + ((end - start) / reach) * 3] as const;
        }) as [readonly [number, number], readonly [number, number]];
        expect(floors[1][0], name).toBeCloseTo(floors[0][0], 6);
        expect(Math.abs(floors[1][1] - floors[0][1]), name).toBeLessThan(0.01);
      }
  });

  test('stands where the finished top is sanded to: 0.3 mm over it everywhere', () => {
    for (const { finished, raised } of all)
      for (const x of [0, 10, 30, 45, 55, 60])
        expect(topHeight(raised.curves.profile, x) - topHeight(finished.curves.profile, x)).toBeCloseTo(
          0.3,
          3,
        );
  });
});

test('none left is the design itself', () => {
  expect(withAllowance(leaning, 0)).toBe(leaning);
});

test('a design that can’t carry it says why, and what to do', () => {
  const thickest = acceptDesign(designText({ 'top.thickness': 18, 'saddle.depth': 12 }));
  const [problem] = thrown(() => withAllowance(thickest, 0.2));
  expect(problem).toMatchObject({ path: 'top.thickness', code: 'out-of-range' });
  expect(problem?.value).toMatch(/^18\.2 with 0\.2 mm left for sanding$/);
  expect(problem?.remedy).toMatch(/with less left for sanding, or none\.$/);
});
