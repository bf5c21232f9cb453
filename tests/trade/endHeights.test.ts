import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fretPlace } from '../../models/curves/fretboard.ts';
import { actionOf, endHeights } from '../../src/trade/endHeights.ts';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('I3: string heights at nut and saddle from the action', () => {
  // derived by two independent programs
  test.each([
    [2.1, 0.45, 0.241366, 3.958634, 1e-6],
    [1.9, 0.4, 0.2103, 3.5897, 5e-5],
    [2.4, 0.55, 0.3161, 4.4839, 5e-5],
  ])('%d at the 12th, %d at the 1st', (at12, at1, nut, saddle, tolerance) => {
    const heights = endHeights({ at12, at1 });
    expect(Math.abs(heights.nut - nut)).toBeLessThan(tolerance);
    expect(Math.abs(heights.saddle - saddle)).toBeLessThan(tolerance);
  });

  test('by coordinates: a straight string over a real scale passes both frets at the measured heights', () => {
    fc.assert(
      fc.property(mm(500, 900), mm(1, 4), mm(0.2, 0.9), (scale, at12, at1) => {
        const { nut, saddle } = endHeights({ at12, at1 });
        const over = (fret: number) => nut + ((saddle - nut) * fretPlace(scale, fret)) / scale;
        expect(over(12)).toBeCloseTo(at12, 9);
        expect(over(1)).toBeCloseTo(at1, 9);
      }),
      { seed: 301, numRuns: 200 },
    );
  });

  test('the inverse gives the action back', () => {
    fc.assert(
      fc.property(mm(0.5, 5), mm(0.1, 1.5), (at12, at1) => {
        const back = actionOf(endHeights({ at12, at1 }));
        expect(back.at12).toBeCloseTo(at12, 10);
        expect(back.at1).toBeCloseTo(at1, 10);
      }),
      { seed: 302, numRuns: 200 },
    );
  });

  test('a clearance that a string at this action can’t have puts the nut at or below the frets', () => {
    expect(endHeights({ at12: 2.1, at1: 0.2 }).nut).toBeLessThan(0);
  });
});
