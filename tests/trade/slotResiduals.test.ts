import { describe, expect, test } from 'vitest';
import { centsError } from '../../src/trade/centsError.ts';
import { setbackInTune } from '../../src/trade/setbackInTune.ts';
import { setbackLeastSquares } from '../../src/trade/setbackLeastSquares.ts';
import { slotLine } from '../../src/trade/slotLine.ts';
import { crownReach, slotResiduals } from '../../src/trade/slotResiduals.ts';
import { LIGHT_PLACES, lightSetups } from '../support/lightSet.ts';

const setups = lightSetups(2);
const wanted = setups.map((setup) => setbackInTune(setup));
const places = wanted.map(({ saddleMm }, i) => ({ xMm: LIGHT_PLACES[i] ?? 0, setbackMm: saddleMm }));
const saddle = { widthMm: 3.2, marginMm: 0.4 };

describe('the light set on its straight slot', () => {
  const line = slotLine(places, 'least-squares');
  const found = slotResiduals(setups, wanted, line, saddle);

  test('each string has the slot’s set-back at its place, and the error that comes with it', () => {
    for (const [i, { onSlotMm, residualMm, cents, cents12 }] of found.entries()) {
      const onLine = line.trebleMm + ((line.bassMm - line.trebleMm) * i) / 5;
      const setup = setups[i];
      if (!setup) throw new Error(`no string ${i}`);
      expect(onSlotMm).toBeCloseTo(onLine, 10);
      expect(residualMm).toBeCloseTo((wanted[i]?.saddleMm ?? 0) - onLine, 10);
      expect(cents).toHaveLength(12);
      expect(cents12).toBe(cents[11]);
      expect(cents12).toBeCloseTo(centsError(setup, 12, onLine), 8);
      // a crown too near the nut leaves the twelfth fret sharp: about 1200/ln 2 · mm/S
      expect(cents12 / residualMm).toBeCloseTo(1200 / Math.LN2 / 645.16, 1);
    }
  });

  test('all but B and G can be filed into a saddle of 3.2 with 0.4 left at the edge', () => {
    expect(crownReach(saddle)).toBeCloseTo(1.2, 12);
    expect(found.map(({ filable }) => filable)).toEqual([true, false, false, true, true, true]);
  });
});

test('a crown that reaches just the edge of what is allowed can be filed; a margin too wide leaves none', () => {
  const line = slotLine([{ xMm: 0, setbackMm: 1 }], 'least-squares', { centreMm: 0 });
  const one = (widthMm: number, marginMm: number) =>
    slotResiduals(setups.slice(0, 1), [{ saddleMm: 1, nutMm: 0 }], line, { widthMm, marginMm })[0]?.filable;
  expect(one(3, 0.5)).toBe(true);
  expect(one(2.99, 0.5)).toBe(false);
  expect(crownReach({ widthMm: 2, marginMm: 1.5 })).toBe(0);
});

test('a string keeps the set-back at the nut that it has', () => {
  const [setup] = setups;
  if (!setup) throw new Error('the set has no first string');
  const nut = setbackLeastSquares(setup, 'solved');
  const line = slotLine([{ xMm: 0, setbackMm: nut.saddleMm }], 'least-squares');
  const [found] = slotResiduals([setup], [nut], line, saddle);
  expect(found?.cents12).toBeCloseTo(centsError(setup, 12, nut.saddleMm, nut.nutMm), 10);
});
