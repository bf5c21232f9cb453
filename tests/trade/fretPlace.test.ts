import { expect, test } from 'vitest';
import { fretPlace } from '../../src/trade/fretPlace.ts';

test.each([
  // derived
  [0, 0],
  [1, 36.21],
  [5, 161.8361],
  [12, 322.58],
  [14, 357.7739],
  [20, 441.9473],
])('I1: fret %i of a scale of 645.16 lies at %s mm', (fret, mm) => {
  expect(Math.abs(fretPlace(645.16, fret) - mm)).toBeLessThan(1e-4);
});
