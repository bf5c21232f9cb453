import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Point } from '../../models/curves/segment.ts';
import { breakAngle } from '../../src/trade/breakAngle.ts';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('B4: the break angle', () => {
  // derived
  test.each([
    [4, 8, 26.565],
    [3.5, 9, 21.251],
  ])('rise %d over a run of %d', (rise, run, angle) => {
    const found = breakAngle(rise, [[run, 0]], 0);
    expect(Math.abs(found.angle - angle)).toBeLessThan(5e-4);
    expect(found).toMatchObject({ rise, run, straight: true, inTheWay: 0, touches: 0 });
  });

  test('the front slope is added', () => {
    const { behind, angle } = breakAngle(4, [[8, 0]], 1.5);
    expect(angle).toBeCloseTo(behind + 1.5, 12);
    expect(behind).toBeCloseTo(26.565, 3);
  });

  test('a channel’s low floor in the hole steepens it, until the string lies on the slot’s back edge', () => {
    // crown 3 over the top; the slot's edge 1.6 behind, the hole's edge 9 behind
    const into = (floor: number) =>
      breakAngle(
        3,
        [
          [1.6, 0],
          [9, floor],
        ],
        0,
      );
    expect(into(-1).behind).toBeCloseTo((Math.atan(4 / 9) * 180) / Math.PI, 9);
    expect(into(-1).straight).toBe(true);
    const bent = into(-15);
    expect(bent).toMatchObject({ straight: false, touches: 0, run: 1.6, rise: 3 });
    expect(bent.behind).toBeCloseTo((Math.atan(3 / 1.6) * 180) / Math.PI, 9);
    // the straight line would have been 1.6·18/9 down at the edge: 0.2 under the top
    expect(bent.inTheWay).toBeCloseTo(0.2, 9);
  });

  test('a top that stands level with the line to the hole doesn’t bend the string', () => {
    const found = breakAngle(
      3,
      [
        [3, 2],
        [6, 1],
      ],
      0,
    );
    expect(found).toMatchObject({ straight: true, touches: 1, inTheWay: 0 });
    const higher = breakAngle(
      3,
      [
        [3, 2.001],
        [6, 1],
      ],
      0,
    );
    expect(higher).toMatchObject({ straight: false, touches: 0, inTheWay: expect.closeTo(0.001, 9) });
  });

  test('a crown under the top has a negative angle, never a steep one', () => {
    expect(breakAngle(-0.5, [[8, 0]], 0).behind).toBeLessThan(0);
  });

  test('more showing, steeper', () => {
    fc.assert(
      fc.property(
        mm(0.5, 5),
        mm(0.01, 2),
        mm(1, 3),
        mm(4, 15),
        mm(-3, 0),
        (showing, more, edge, run, floor) => {
          const wood: readonly Point[] = [
            [edge, 0],
            [run, floor],
          ];
          expect(breakAngle(showing + more, wood, 1).angle).toBeGreaterThan(
            breakAngle(showing, wood, 1).angle,
          );
        },
      ),
      { seed: 310, numRuns: 200 },
    );
  });

  test('by pulling: the string’s angle is where a line swung up from below first clears all the wood', () => {
    const wood = fc
      .array(fc.tuple(mm(0.2, 12), mm(-3, 1)), { minLength: 1, maxLength: 8 })
      .map((points): readonly Point[] => points.sort((a, b) => a[0] - b[0]));
    fc.assert(
      fc.property(wood, mm(1, 5), (points, crown) => {
        const clears = (degrees: number) =>
          points.every(([s, z]) => crown - s * Math.tan((degrees * Math.PI) / 180) >= z);
        let [steep, flat] = [89.999, -89.999];
        while (steep - flat > 1e-9) {
          const middle = (steep + flat) / 2;
          if (clears(middle)) flat = middle;
          else steep = middle;
        }
        const found = breakAngle(crown, points, 0);
        expect(found.behind).toBeCloseTo(flat, 6);
        expect(found.straight).toBe(found.inTheWay === 0);
      }),
      { seed: 311, numRuns: 200 },
    );
  });

  test('wood that isn’t behind the crown is refused', () => {
    expect(() => breakAngle(3, [], 0)).toThrow(RangeError);
    expect(() => breakAngle(3, [[0, 0]], 0)).toThrow(/behind/);
  });
});
