import { describe, expect, test } from 'vitest';
import { meetCircles, roundCorner } from '../../../models/curves/roundCorner.ts';
import { arc, directionAt, distance, line, type Segment } from '../../../models/curves/segment.ts';

const alongX = line([0, 0], [20, 0]);
const upFrom20 = line([20, 0], [20, 15]);

/** Whether two pieces meet without a corner. */
function runsOn(a: Segment, b: Segment): void {
  expect(distance(a.to, b.from)).toBeLessThan(1e-9);
  const [u, v] = [directionAt(a, 1), directionAt(b, 0)];
  expect(u[0] * v[1] - u[1] * v[0]).toBeCloseTo(0, 9);
  expect(u[0] * v[0] + u[1] * v[1]).toBeGreaterThan(0);
}

describe('a corner between two pieces', () => {
  test('a right angle loses the radius on both sides (derived)', () => {
    const made = roundCorner(alongX, upFrom20, 6);
    expect(made?.before.to).toEqual([14, 0]);
    expect(made?.after.from).toEqual([20, 6]);
    expect(made?.corner.centre).toEqual([14, 6]);
  });

  test('an angle of φ loses R·tan(φ/2) (derived)', () => {
    const [cos, sin] = [Math.cos(1), Math.sin(1)];
    const made = roundCorner(alongX, line([20, 0], [20 + 30 * cos, 30 * sin]), 8);
    expect(20 - (made?.before.to[0] ?? 0)).toBeCloseTo(8 * Math.tan(0.5), 10);
  });

  test.each<[string, Segment, Segment, number]>([
    ['line to line', alongX, upFrom20, 3],
    ['line to swelling arc', alongX, arc([20, 0], [20, 16], [14, 8], 1), 3],
    ['line to hollow arc', alongX, arc([20, 0], [20, 16], [26, 8], -1), 3],
    ['swelling arc to line', arc([0, 0], [20, 0], [10, 30], 1), upFrom20, 3],
    ['hollow arc to line', arc([0, 0], [20, 0], [10, -30], -1), upFrom20, 3],
    ['arc to arc', arc([0, 0], [20, 0], [10, 30], 1), arc([20, 0], [20, 16], [14, 8], 1), 2],
  ])('%s runs on without a corner, on the left of both', (_name, before, after, radius) => {
    const made = roundCorner(before, after, radius);
    expect(made).toBeDefined();
    if (!made) return;
    runsOn(made.before, made.corner);
    runsOn(made.corner, made.after);
    expect(made.corner.turn).toBe(1);
    expect(made.corner.radius).toBeCloseTo(radius, 9);
  });
});

test('there is none where the radius takes a whole piece, or leaves less than can be cut', () => {
  expect(roundCorner(alongX, upFrom20, 15)).toBeUndefined();
  expect(roundCorner(alongX, upFrom20, 14.96)).toBeUndefined();
  expect(roundCorner(alongX, upFrom20, 14.94)).toBeDefined();
  expect(roundCorner(alongX, upFrom20, 21)).toBeUndefined();
});

test('there is none at a corner that turns right, or doesn’t turn', () => {
  expect(roundCorner(alongX, line([20, 0], [20, -15]), 3)).toBeUndefined();
  expect(roundCorner(alongX, line([20, 0], [40, 0]), 3)).toBeUndefined();
});

test('circles cross in two points, or in none (a 3-4-5 triangle: derived)', () => {
  expect(meetCircles([0, 0], 5, [6, 0], 5)).toEqual([
    [3, 4],
    [3, -4],
  ]);
  expect(meetCircles([0, 0], 5, [11, 0], 5)).toEqual([]);
  expect(meetCircles([0, 0], 5, [1, 0], 2)).toEqual([]);
  expect(meetCircles([0, 0], 5, [0, 0], 5)).toEqual([]);
});
