import { expect, test } from 'vitest';
import { actionHeights } from '../../src/trade/actionHeights.ts';
import { fretPlace } from '../../src/trade/fretPlace.ts';

test.each([
  // derived
  [0.45, 2.1, 0.241366, 3.958634, 1e-6],
  [0.4, 1.9, 0.2103, 3.5897, 1e-4],
  [0.55, 2.4, 0.3161, 4.4839, 1e-4],
])('I3: clearance %s, action %s → %s at the nut, %s at the saddle', (c1, a12, nut, saddle, tolerance) => {
  const { nutMm, saddleMm } = actionHeights(c1, a12);
  expect(Math.abs(nutMm - nut)).toBeLessThan(tolerance);
  expect(Math.abs(saddleMm - saddle)).toBeLessThan(tolerance);
});

test('a straight line between the two passes the first and the twelfth fret as measured', () => {
  const { nutMm, saddleMm } = actionHeights(0.5, 2.2);
  const at = (fret: number) => nutMm + (saddleMm - nutMm) * fretPlace(1, fret);
  expect(at(1)).toBeCloseTo(0.5, 12);
  expect(at(12)).toBeCloseTo(2.2, 12);
});
