import { describe, expect, test } from 'vitest';
import { centsByFret, centsError } from '../../src/trade/centsError.ts';
import { setbackClosedForm } from '../../src/trade/setbackClosedForm.ts';
import { setbackInTune } from '../../src/trade/setbackInTune.ts';
import { setbackLeastSquares } from '../../src/trade/setbackLeastSquares.ts';
import { leastOf, leastOfTwo } from '../support/leastBySearch.ts';
import { lightSetups } from '../support/lightSet.ts';

const NUTS = [0, -0.4, 0.3];
const squares = (cents: readonly number[]) => cents.reduce((sum, c) => sum + c * c, 0);

describe.each([0, 1, 1.1, 2])('steel strings, α = %s (derived)', (alpha) => {
  const setups = lightSetups(alpha);

  test('the fret that is to be in tune is', () => {
    for (const setup of setups) {
      for (const nutMm of NUTS) {
        for (const fret of [5, 12, 19]) {
          const found = setbackInTune(setup, nutMm, fret);
          expect(found.nutMm).toBe(nutMm);
          expect(Math.abs(centsError(setup, fret, found.saddleMm, nutMm))).toBeLessThan(1e-9);
        }
      }
    }
  });

  test('least squares with the nut as it is are where a search finds them', () => {
    for (const setup of setups) {
      for (const nutMm of NUTS) {
        const sum = (saddleMm: number) => squares(centsByFret(setup, { saddleMm, nutMm }));
        const searched = leastOf(sum, -5, 15);
        const found = setbackLeastSquares(setup, nutMm);
        expect(found.nutMm).toBe(nutMm);
        expect(Math.abs(found.saddleMm - searched)).toBeLessThan(1e-5);
        expect(Math.abs(setbackClosedForm(setup, nutMm).saddleMm - searched)).toBeLessThan(0.15);
      }
    }
  });

  test('least squares with the nut solved are where a search finds them', () => {
    for (const setup of setups) {
      const sum = (saddleMm: number, nutMm: number) => squares(centsByFret(setup, { saddleMm, nutMm }));
      const [saddleMm, nutMm] = leastOfTwo(sum, [-2, 12], [-2, 2]);
      const found = setbackLeastSquares(setup, 'solved');
      expect(Math.abs(found.saddleMm - saddleMm)).toBeLessThan(1e-4);
      expect(Math.abs(found.nutMm - nutMm)).toBeLessThan(1e-4);
      const closed = setbackClosedForm(setup, 'solved');
      expect(Math.abs(closed.saddleMm - saddleMm)).toBeLessThan(0.15);
      expect(Math.abs(closed.nutMm - nutMm)).toBeLessThan(0.02);
    }
  });
});

test('figures beyond reason end too', () => {
  const [setup] = lightSetups(2);
  if (!setup) throw new Error('the set has no first string');
  for (const stretch of [Number.NaN, 1e9, -1e9, 0]) {
    expect(typeof setbackInTune({ ...setup, stretch }).saddleMm).toBe('number');
    expect(typeof setbackLeastSquares({ ...setup, stretch }, 'solved').saddleMm).toBe('number');
  }
});
