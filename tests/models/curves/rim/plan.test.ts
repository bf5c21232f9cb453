import { describe, expect, test } from 'vitest';
import { facesAlongY, outermost, planOf, quarterTurns } from '../../../../models/curves/rim/plan.ts';
import { arc } from '../../../../models/curves/segment.ts';
import { disc, rounded } from '../../surface/slab.ts';

// 100 × 30 with corners of 8: derived by hand.
const outline = rounded(100, 30, 8);
const plan = planOf(outline);

test('its length, joints and box', () => {
  expect(plan.length).toBeCloseTo(2 * (84 + 14) + 16 * Math.PI, 9);
  expect(plan.joints).toHaveLength(9);
  expect(plan.joints[2]).toBeCloseTo(84 + 4 * Math.PI, 9);
  const { x0, y0, x1, y1 } = plan.box;
  [x0, y0, x1, y1].forEach((v, i) => {
    expect(v).toBeCloseTo([-50, -15, 50, 15][i] as number, 9);
  });
});

describe('places along it', () => {
  test('have their point, direction and bend, round and round', () => {
    for (const turn of [-1, 0, 2]) {
      const p = plan.at(10 + turn * plan.length);
      expect(p.x).toBeCloseTo(-32, 9);
      expect(p.y).toBeCloseTo(-15, 9);
      expect([p.dx, p.dy, p.bend]).toEqual([1, 0, 0]);
    }
    const corner = plan.at(84 + 2 * Math.PI);
    expect(corner.x).toBeCloseTo(42 + 8 * Math.SQRT1_2, 9);
    expect(corner.y).toBeCloseTo(-7 - 8 * Math.SQRT1_2, 9);
    expect(corner.dx).toBeCloseTo(Math.SQRT1_2, 9);
    expect(corner.bend).toBeCloseTo(1 / 8, 12);
  });

  test('bend is negative where the wood is hollow', () => {
    expect(planOf([arc([0, 0], [10, 0], [5, 0], -1)]).at(1).bend).toBeCloseTo(-1 / 5, 12);
  });

  test('the nearest one is found as by a dense walk', () => {
    for (const [x, y] of [
      [0, 3],
      [45, 10],
      [49, -14],
      [-60, 2],
      [0, 40],
    ] as const) {
      let least = Number.POSITIVE_INFINITY;
      for (let s = 0; s < plan.length; s += 0.01) {
        const p = plan.at(s);
        least = Math.min(least, Math.hypot(p.x - x, p.y - y));
      }
      const near = plan.nearest(x, y);
      expect(near?.distance, `from (${x}, ${y})`).toBeCloseTo(least, 4);
      const p = plan.at(near?.s as number);
      expect(Math.hypot(p.x - x, p.y - y)).toBeCloseTo(near?.distance as number, 9);
      expect(plan.nearest(x, y, least - 0.01)).toBeUndefined();
    }
  });
});

test('it contains what lies inside, joints’ levels included', () => {
  for (const y of [-15 + 1e-6, -7, 0, 7, 15 - 1e-6]) {
    expect(plan.contains(0, y), `(0, ${y})`).toBe(true);
    expect(plan.contains(50.01, y), `(50.01, ${y})`).toBe(false);
  }
  expect(plan.contains(49, 14), 'outside a corner').toBe(false);
  expect(plan.contains(47, 12), 'inside a corner').toBe(true);
});

test('walls along X are told from others, and from what reaches past their ends', () => {
  const on = (s: number) => ({ s, distance: 0, piece: plan.joints.findIndex((j) => j > s) - 1 });
  expect(facesAlongY(plan, on(40), 10)).toBe(true);
  expect(facesAlongY(plan, on(5), 10)).toBe(false);
  expect(facesAlongY(plan, on(86), 0.1), 'a corner').toBe(false);
  expect(facesAlongY(plan, on(84 + 4 * Math.PI + 7), 1), 'a wall along Y').toBe(false);
});

test('an arc passes its quarters in the order it is walked', () => {
  const threeQuarters = arc([5, 0], [0, -5], [0, 0], 1);
  expect(quarterTurns(threeQuarters, [Math.PI, Math.PI / 2, 0])).toEqual(
    [1 / 3, 2 / 3].map((t) => expect.closeTo(t, 9)),
  );
});

test('a disc’s outermost points are its four quarters', () => {
  const found = outermost(disc(20));
  for (const [x, y] of [
    [20, 0],
    [0, 20],
    [-20, 0],
    [0, -20],
  ] as const) {
    const least = Math.min(...found.map(([a, b]) => Math.hypot(a - x, b - y)));
    expect(least, `from (${x}, ${y}) to the nearest of them`).toBeLessThan(1e-9);
  }
});
