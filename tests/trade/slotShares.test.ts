import fc from 'fast-check';
import { expect, test } from 'vitest';
import { slotShares } from '../../src/trade/slotShares.ts';

test('by hand: six strings 11 apart in a slot of 74 have 11 each, from either side', () => {
  const places = [27.5, 16.5, 5.5, -5.5, -16.5, -27.5];
  expect(slotShares(places, 37)).toEqual([11, 11, 11, 11, 11, 11]);
  expect(slotShares(places.toReversed(), 37)).toEqual([11, 11, 11, 11, 11, 11]);
});

test('by hand: a slot that ends 2 mm beyond the last string leaves it 5.5 + 2', () => {
  expect(slotShares([11, 0, -11], 13)).toEqual([7.5, 11, 7.5]);
});

test('by hand: pairs, 2 apart, share out the 10 between them', () => {
  expect(slotShares([13, 11, 1, -1, -11, -13], 30)).toEqual([2, 6, 6, 6, 6, 2]);
});

test('no two strings have the same wood, and none has wood beyond the slot', () => {
  const steps = fc.array(fc.double({ min: 1, max: 15, noNaN: true }), { minLength: 3, maxLength: 11 });
  fc.assert(
    fc.property(steps, fc.double({ min: 0, max: 10, noNaN: true }), (gaps, beyond) => {
      const spread = gaps.reduce((sum, gap) => sum + gap, 0);
      let at = spread / 2;
      const places = [at];
      for (const gap of gaps) {
        at -= gap;
        places.push(at);
      }
      const shares = slotShares(places, spread / 2 + beyond);
      const together = shares.reduce((sum, share) => sum + share, 0);
      expect(together).toBeGreaterThanOrEqual(spread - 1e-9);
      expect(together).toBeLessThanOrEqual(spread + 2 * beyond + 1e-9);
    }),
    { seed: 404, numRuns: 200 },
  );
});
