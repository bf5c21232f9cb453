import { expect, test } from 'vitest';
import { surfaceFigures } from '../../../models/surface/figures.ts';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { volumeEstimate } from '../../../src/report/findings/volumeEstimate.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { sound } from './sound.ts';

test('is near the surface’s own volume', () => {
  for (const { curves } of acceptedDesigns(15, 31).accepted) {
    const share = volumeEstimate(curves) / surfaceFigures(curves, 'reamed').volumeMm3;
    expect(share).toBeGreaterThan(0.9);
    expect(share).toBeLessThan(1.1);
  }
});

test('grows as the surface’s does when one dimension does: calibrated on one, it gives the other within 1 in 500', () => {
  const both = (changes: Record<string, unknown>) => {
    const { curves } = acceptDesign(sound(changes));
    return { rough: volumeEstimate(curves), exact: surfaceFigures(curves, 'reamed').volumeMm3 };
  };
  const now = both({});
  for (const changes of [
    { 'top.block': 100 },
    { 'top.tip': 4 },
    { 'footprint.length': 165 },
    { 'footprint.depthWing': 31 },
  ]) {
    const other = both(changes);
    const guess = (now.exact * other.rough) / now.rough;
    expect(Math.abs(guess / other.exact - 1), JSON.stringify(changes)).toBeLessThan(0.002);
  }
});
