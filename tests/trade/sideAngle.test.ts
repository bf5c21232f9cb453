import { expect, test } from 'vitest';
import { sideAngle } from '../../src/trade/sideAngle.ts';

test('a string that goes on straight doesn’t turn', () => {
  expect(sideAngle([22, 645], [27.5, 0], [27.5 + (13 * 5.5) / 645, -13])).toBeCloseTo(0, 9);
});

test('a pin 1 mm further out over 13 mm turns the string by atan(1/13), to +X on the treble side', () => {
  expect(sideAngle([27.5, 645], [27.5, 0], [28.5, -13])).toBeCloseTo((Math.atan(1 / 13) * 180) / Math.PI, 9);
});

test('the other hand is the mirror image', () => {
  const right = sideAngle([18, 645], [27.5, 1.4], [28.5, -13]);
  expect(sideAngle([-18, 645], [-27.5, 1.4], [-28.5, -13])).toBeCloseTo(-right, 12);
});
