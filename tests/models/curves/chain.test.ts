import { describe, expect, test } from 'vitest';
import {
  arcPieces,
  backwards,
  chainLength,
  crossings,
  distanceTo,
  enclosedArea,
  isInside,
  mirrorImage,
  polygon,
} from '../../../models/curves/chain.ts';
import { arc, type Chain, distance, line, type Point } from '../../../models/curves/segment.ts';

/** A rectangle of 40 × 20 round the origin with corners of 6. */
const rounded: Chain = [
  line([-14, -10], [14, -10]),
  arc([14, -10], [20, -4], [14, -4], 1),
  line([20, -4], [20, 4]),
  arc([20, 4], [14, 10], [14, 4], 1),
  line([14, 10], [-14, 10]),
  arc([-14, 10], [-20, 4], [-14, 4], 1),
  line([-20, 4], [-20, -4]),
  arc([-20, -4], [-14, -10], [-14, -4], 1),
];
const circle: Chain = [arc([3, 0], [-3, 0], [0, 0], 1), arc([-3, 0], [3, 0], [0, 0], 1)];
/** A square with a bite of a half circle out of its top. */
const bitten: Chain = [
  line([0, 0], [10, 0]),
  line([10, 0], [10, 10]),
  line([10, 10], [8, 10]),
  arc([8, 10], [2, 10], [5, 10], -1),
  line([2, 10], [0, 10]),
  line([0, 10], [0, 0]),
];

describe('area and length are those of geometry (derived)', () => {
  test('rounded rectangle: L·W − (4 − π)r², 2(L + W) − (8 − 2π)r', () => {
    expect(enclosedArea(rounded)).toBeCloseTo(40 * 20 - (4 - Math.PI) * 36, 10);
    expect(chainLength(rounded)).toBeCloseTo(2 * (40 + 20) - (8 - 2 * Math.PI) * 6, 10);
  });
  test('circle: πr², 2πr', () => {
    expect(enclosedArea(circle)).toBeCloseTo(9 * Math.PI, 12);
    expect(chainLength(circle)).toBeCloseTo(6 * Math.PI, 12);
  });
  test('a hollow arc takes its half circle away', () => {
    expect(enclosedArea(bitten)).toBeCloseTo(100 - 4.5 * Math.PI, 10);
  });
  test('walked backwards the area is negative; mirrored it stays positive', () => {
    expect(enclosedArea(backwards(bitten))).toBeCloseTo(-enclosedArea(bitten), 10);
    expect(enclosedArea(mirrorImage(bitten))).toBeCloseTo(enclosedArea(bitten), 10);
  });
});

test('a fine polygon has nearly the area, and no side strays further than it may', () => {
  for (const deviation of [0.5, 0.05, 0.001]) {
    const corners = polygon(bitten, deviation);
    const area = corners.reduce((sum, [x, y], i) => {
      const [u, v] = corners[(i + 1) % corners.length] as Point;
      return sum + (x * v - u * y) / 2;
    }, 0);
    expect(Math.abs(area - enclosedArea(bitten))).toBeLessThan(deviation * 3 * Math.PI);
    corners.forEach((p, i) => {
      const q = corners[(i + 1) % corners.length] as Point;
      expect(distanceTo(bitten, p)).toBeLessThan(1e-9);
      expect(distanceTo(bitten, [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2])).toBeLessThanOrEqual(
        deviation + 1e-9,
      );
    });
  }
});

test('an arc is cut into no more chords than its sagitta asks for: s = r(1 − cos(a/2)) (derived)', () => {
  const [radius, sweep, deviation] = [10, Math.PI / 2, 0.02];
  const n = arcPieces(radius, sweep, deviation);
  const sagitta = (pieces: number) => radius * (1 - Math.cos(sweep / pieces / 2));
  expect(sagitta(n)).toBeLessThanOrEqual(deviation);
  expect(sagitta(n - 1)).toBeGreaterThan(deviation);
  expect(arcPieces(1, 0.001, 5)).toBe(1);
});

test('inside and outside, exact on curves, at corners’ heights and in the bite', () => {
  for (const p of [
    [0, 0],
    [19.9, 0],
    [18.2, 8.2],
    [-14, 9.9],
    [0, -9.99],
  ] as const) {
    expect(isInside(rounded, p), `${p}`).toBe(true);
  }
  for (const p of [
    [20.1, 0],
    [18.4, 8.4],
    [-14, 10.1],
    [25, 4],
    [-25, -4],
    [0, -10.01],
    [-25, 10],
  ] as const) {
    expect(isInside(rounded, p), `${p}`).toBe(false);
  }
  expect(isInside(bitten, [5, 7.1])).toBe(false);
  expect(isInside(bitten, [5, 6.9])).toBe(true);
  expect(isInside(bitten, [2.2, 9.5])).toBe(false);
  expect(isInside(bitten, [1, 9.5])).toBe(true);
});

test('a level crosses each rising or falling piece once, and joints count once', () => {
  const hill = arc([3, 0], [-3, 0], [0, 0], 1);
  expect(crossings(hill, 0).length % 2).toBe(0);
  expect(
    [...crossings(hill, Math.sqrt(5))].sort((a, b) => a - b).map((x) => Math.round(x * 1e9) / 1e9),
  ).toEqual([-2, 2]);
  expect(crossings(hill, 3.1)).toEqual([]);
  expect(crossings(line([0, 0], [10, 5]), 2)).toEqual([4]);
});

test('the distance to a chain is to its nearest piece', () => {
  expect(distanceTo(rounded, [0, 0])).toBe(10);
  expect(distanceTo(rounded, [25, 0])).toBe(5);
  expect(distanceTo(rounded, [20, 10])).toBeCloseTo(distance([20, 10], [14, 4]) - 6, 12);
});
