import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stations, wishesAt } from '../../../models/draft/stations.ts';

test('one curve’s wishes are all met', () => {
  const xs = [0, 1, 1.5, 3, 7, 8, 10];
  expect(stations(wishesAt(xs), 0, 10)).toEqual(xs.slice(1, -1));
});

test('a column that must be kept takes the place of one beside it', () => {
  expect(stations([...wishesAt([0, 2, 4, 6, 8]), { x: 4.1, room: 0 }], 0, 8)).toEqual([2, 4.1, 6]);
});

const curve = fc
  .uniqueArray(fc.integer({ min: 1, max: 9999 }), { maxLength: 40 })
  .map((xs) => [0, ...xs.map((n) => n / 100).sort((a, b) => a - b), 100]);

test('columns ascend, none doubles another, and no wish lies further from one than a third of its room', () => {
  fc.assert(
    fc.property(fc.array(curve, { minLength: 1, maxLength: 4 }), (lists) => {
      const wishes = lists.flatMap(wishesAt);
      const found = [0, ...stations(wishes, 0, 100), 100];
      for (let i = 1; i < found.length; i++) {
        expect((found[i] as number) - (found[i - 1] as number)).toBeGreaterThanOrEqual(1e-4);
      }
      for (const { x, room } of wishes) {
        const nearest = Math.min(...found.map((one) => Math.abs(one - x)));
        expect(nearest).toBeLessThanOrEqual(room / 3 + 1e-4);
      }
    }),
    { seed: 5, numRuns: 300 },
  );
});
