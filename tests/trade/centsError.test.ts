import { describe, expect, test } from 'vitest';
import { centsByFret, centsError } from '../../src/trade/centsError.ts';
import { stiffnessFactor } from '../../src/trade/endCondition.ts';
import type { IntonationSetup } from '../../src/trade/intonationSetup.ts';
import { lightSetups } from '../support/lightSet.ts';

/** A flexible string that lies on the frets and doesn't mind being stretched. */
const ideal: IntonationSetup = {
  scaleMm: 650,
  heights: { nut: 0, saddle: 0 },
  stretch: 0,
  bending: 0,
  clampedEnds: 0,
};

test('I2: c₂ is π²/2, 1 + π²/2 and 4 + π²/2 for α = 0, 1 and 2', () => {
  for (const [alpha, more] of [
    [0, 0],
    [1, 1],
    [2, 4],
  ] as const)
    expect(stiffnessFactor(0.01, alpha)).toBeCloseTo(1 + alpha * 0.01 + (more + Math.PI ** 2 / 2) * 1e-4, 14);
});

describe('one cause at a time (derived)', () => {
  test('none: every fret is in tune', () => {
    for (const cents of centsByFret(ideal, { saddleMm: 0, nutMm: 0 }, 24))
      expect(Math.abs(cents)).toBeLessThan(1e-10);
  });

  test('length: a set-back flattens the twelfth fret by the ratio of the two lengths', () => {
    expect(centsError(ideal, 12, 3)).toBeCloseTo(1200 * Math.log2(653 / (2 * 328)), 9);
    expect(centsError(ideal, 12, 0, -1)).toBeCloseTo(1200 * Math.log2(649 / 650), 9);
  });

  test('tension: pressing to the frets raises the pitch as a stretched wire does', () => {
    const setup = { ...ideal, heights: { nut: 0, saddle: 4 }, stretch: 140 };
    const [open, sounding] = [Math.hypot(650, 4), Math.hypot(325, 4)];
    const longer = (sounding + 325) / open - 1;
    // pitch is √(T/μ)/(2·length): tension grows by 1 + 140·longer, mass per length falls by 1 + longer
    const ratio = (open / sounding) * Math.sqrt((1 + 140 * longer) * (1 + longer));
    expect(centsError(setup, 12, 0)).toBeCloseTo(1200 * Math.log2(ratio / 2), 9);
    expect(centsError(setup, 12, 0)).toBeGreaterThan(2);
  });

  test('stiffness: half the string has twice the B', () => {
    const setup = { ...ideal, bending: 0.003, clampedEnds: 2 };
    const ratio = stiffnessFactor(0.006, 2) / stiffnessFactor(0.003, 2);
    expect(centsError(setup, 12, 0)).toBeCloseTo(1200 * Math.log2(ratio), 9);
  });
});

test('an open string has no error, whatever its set-backs', () => {
  for (const setup of lightSetups(2)) expect(centsError(setup, 0, 3, -0.5)).toBe(0);
});

test('without set-back every fret of a real string is sharp, and the higher the sharper', () => {
  for (const setup of lightSetups(1)) {
    const cents = centsByFret(setup, { saddleMm: 0, nutMm: 0 }).slice(3);
    for (const [i, c] of cents.entries()) expect(c).toBeGreaterThan(cents[i - 1] ?? 0);
  }
});
