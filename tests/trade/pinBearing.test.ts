import { expect, test } from 'vitest';
import { pinBearing } from '../../src/trade/pinBearing.ts';

test('by hand: 100 N that slope by 25° over a hole of 5.2 in 9 mm of wood: 1.9366 MPa (derived, an estimate)', () => {
  expect(pinBearing(100, 25, 5.2, 9)).toBeCloseTo(90.6308 / 46.8, 5);
});

test('by vectors: it is what turning the string straight down asks of the hole toward the nut', () => {
  for (const behind of [5, 20, 45]) {
    const t2 = (behind * Math.PI) / 180;
    // the wood is pulled along the string toward the saddle, and down along the string in the hole: (toward the nut, up)
    const pulls = [
      [110 * Math.cos(t2), 110 * Math.sin(t2)],
      [0, -110],
    ] as const;
    const towardNut = pulls.reduce((sum, [y]) => sum + y, 0);
    expect(pinBearing(110, behind, 5, 8) * 40, `${behind}°`).toBeCloseTo(towardNut, 9);
  }
});

test('no hole or no wood is refused', () => {
  expect(() => pinBearing(100, 20, 0, 9)).toThrow(RangeError);
  expect(() => pinBearing(100, 20, 5, 0)).toThrow(RangeError);
});
