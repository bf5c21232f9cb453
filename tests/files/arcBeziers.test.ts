import { expect, test } from 'vitest';
import { arc, distance, type Point } from '../../models/curves/segment.ts';
import { arcBeziers, type Cubic } from '../../src/files/arcBeziers.ts';

/** The point of a cubic at t, by Bernstein's polynomials. */
function bernstein(from: Point, [c, d, to]: Cubic, t: number): Point {
  const s = 1 - t;
  const at = (i: 0 | 1) => s ** 3 * from[i] + 3 * s * s * t * c[i] + 3 * s * t * t * d[i] + t ** 3 * to[i];
  return [at(0), at(1)];
}

test.each([0.2, 1.35, 12.7, 300, 600, 8000])(
  'cubics lie within 1e-4 mm of an arc of radius %f mm',
  (radius) => {
    const centre: Point = [3, -4];
    const on = (a: number): Point => [3 + radius * Math.cos(a), -4 + radius * Math.sin(a)];
    for (const turn of [1, -1] as const) {
      for (const sweep of [0.01, 0.4, Math.PI / 2, Math.PI, 5.9]) {
        const a = arc(on(0.7), on(0.7 + turn * sweep), centre, turn);
        let from = a.from;
        let travelled = 0;
        for (const cubic of arcBeziers(a)) {
          for (let i = 0; i <= 20; i++) {
            const p = bernstein(from, cubic, i / 20);
            expect(Math.abs(distance(p, centre) - radius), `sweep ${sweep}`).toBeLessThan(1.02e-4);
          }
          const [start, end] = [from, cubic[2]].map(([x, y]) => Math.atan2(y + 4, x - 3)) as [number, number];
          travelled += (turn * (end - start) + 2 * Math.PI) % (2 * Math.PI);
          from = cubic[2];
        }
        expect(from).toEqual(a.to);
        expect(travelled, 'goes the arc’s own way round').toBeCloseTo(sweep, 6);
      }
    }
  },
);

test('no more cubics than are needed: a half turn of a pin’s radius is two', () => {
  expect(arcBeziers(arc([2.5, 0], [-2.5, 0], [0, 0], 1)).length).toBeLessThanOrEqual(4);
});
