import { describe, expect, test } from 'vitest';
import {
  arc,
  directionAt,
  distance,
  lengthOf,
  line,
  mirrored,
  nearestOn,
  type Point,
  pointAt,
  reversed,
  type Segment,
  sweepOf,
} from '../../../models/curves/segment.ts';

const straight = line([1, 2], [4, 6]);
/** A quarter of a circle of 5 round (1, 1), from its right to its top. */
const quarter = arc([6, 1], [1, 6], [1, 1], 1);
/** The other three quarters, the other way round. */
const rest = arc([6, 1], [1, 6], [1, 1], -1);

const near = (p: Point, q: Point) => expect(distance(p, q)).toBeLessThan(1e-12);

test('lengths: a 3-4-5 line, a quarter and three quarters of a circle (derived)', () => {
  expect(lengthOf(straight)).toBe(5);
  expect(sweepOf(quarter)).toBeCloseTo(Math.PI / 2, 14);
  expect(lengthOf(quarter)).toBeCloseTo((5 * Math.PI) / 2, 12);
  expect(lengthOf(rest)).toBeCloseTo((15 * Math.PI) / 2, 12);
});

test('an arc turns past the place where angles jump from π to −π', () => {
  const over = arc([-1, 0.1], [-1, -0.1], [0, 0], 1);
  expect(sweepOf(over)).toBeCloseTo(2 * Math.atan(0.1), 12);
});

describe.each<[string, Segment]>([
  ['line', straight],
  ['quarter', quarter],
  ['three quarters', rest],
])('%s', (_name, s) => {
  test('begins and ends at its ends, and runs evenly between', () => {
    near(pointAt(s, 0), s.from);
    near(pointAt(s, 1), s.to);
    const steps = Array.from({ length: 100 }, (_, i) =>
      distance(pointAt(s, i / 100), pointAt(s, (i + 1) / 100)),
    );
    expect(Math.max(...steps) - Math.min(...steps)).toBeLessThan(1e-9);
  });

  test('its direction is that of the next small step', () => {
    for (const t of [0, 0.3, 0.7, 0.999]) {
      const [a, b] = [pointAt(s, t), pointAt(s, t + 1e-6)];
      const l = distance(a, b);
      const d = directionAt(s, t);
      near(
        [(b[0] - a[0]) / l - d[0], (b[1] - a[1]) / l - d[1]].map((v) =>
          Math.round(v * 1e5),
        ) as unknown as Point,
        [0, 0],
      );
    }
  });

  test('walked backwards it is the same curve', () => {
    for (const t of [0, 0.25, 0.5, 1]) near(pointAt(reversed(s), t), pointAt(s, 1 - t));
    expect(lengthOf(reversed(s))).toBeCloseTo(lengthOf(s), 12);
  });

  test('its mirror image has every x turned round', () => {
    for (const t of [0, 0.25, 0.5, 1]) {
      const [x, y] = pointAt(s, t);
      near(pointAt(mirrored(s), t), [-x, y]);
    }
  });

  test('the nearest point is no farther than any of a thousand others', () => {
    for (const p of [
      [0, 0],
      [10, 3],
      [1, 1.5],
      [-4, 9],
      [3, -7],
      [8, 8],
    ] as const) {
      const found = nearestOn(s, p);
      near(pointAt(s, found.t), found.point);
      const least = Math.min(...Array.from({ length: 1001 }, (_, i) => distance(p, pointAt(s, i / 1000))));
      expect(found.distance).toBeLessThanOrEqual(least + 1e-12);
      expect(found.distance).toBeGreaterThan(least - 0.02);
    }
  });
});
