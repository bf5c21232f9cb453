import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saddleLoad } from '../../src/trade/saddleLoad.ts';

describe('a string’s load on its saddle', () => {
  // derived
  test.each([
    [10, 17.431],
    [20, 34.73],
    [30, 51.764],
  ])('B2: 100 N over a break of %d° press with %d N', (angle, newtons) => {
    expect(saddleLoad(100, 0, angle).resultant).toBeCloseTo(newtons, 3);
    expect(saddleLoad(100, angle / 4, (3 * angle) / 4).resultant).toBeCloseTo(newtons, 3);
  });

  test.each([
    [0, 20, 34.202, 6.031],
    [1.5, 25, 44.88, 9.335],
  ])('B3: %d° in front, %d° behind', (front, behind, down, forward) => {
    const load = saddleLoad(100, front, behind);
    expect(load.down).toBeCloseTo(down, 3);
    expect(load.forward).toBeCloseTo(forward, 3);
  });

  test('B2 and B3 agree, and are the sum of the string’s two pulls as vectors', () => {
    const degrees = (max: number) => fc.double({ min: 0, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 200, noNaN: true }),
        degrees(5),
        degrees(45),
        (t, front, behind) => {
          const load = saddleLoad(t, front, behind);
          expect(Math.hypot(load.down, load.forward)).toBeCloseTo(load.resultant, 9);
          const pull = (direction: number) => [
            t * Math.cos((direction * Math.PI) / 180),
            t * Math.sin((direction * Math.PI) / 180),
          ];
          // toward the nut and down in front; toward the tail (180°) and down behind
          const [f, b] = [pull(-front), pull(180 + behind)];
          expect(load.forward).toBeCloseTo((f[0] ?? 0) + (b[0] ?? 0), 9);
          expect(load.down).toBeCloseTo(-((f[1] ?? 0) + (b[1] ?? 0)), 9);
        },
      ),
      { seed: 312, numRuns: 200 },
    );
  });
});
