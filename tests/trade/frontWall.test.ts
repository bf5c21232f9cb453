import { expect, test } from 'vitest';
import { frontWall } from '../../src/trade/frontWall.ts';
import { slotWalls } from '../../src/trade/slotWalls.ts';

test('B8: 57.778 N, 9 high, 11 long, 3 thick: 31.5 MPa (derived)', () => {
  expect(Math.abs(frontWall(57.778, 9, 11, 3) - 31.5)).toBeLessThan(0.05);
  expect(frontWall(slotWalls(40, 4, 9).front, 9, 11, 3)).toBeCloseTo(31.515, 3);
});

test('by adding up: the stress over the wall’s foot holds the moment', () => {
  const [force, height, share, thickness] = [40, 6, 11, 2.5];
  const edge = frontWall(force, height, share, thickness);
  let moment = 0;
  const steps = 2000;
  for (let i = 0; i < steps; i++) {
    const y = ((i + 0.5) / steps - 0.5) * thickness;
    moment += ((edge * y) / (thickness / 2)) * y * share * (thickness / steps);
  }
  expect(moment).toBeCloseTo(force * height, 3);
});

test('no wall is refused', () => {
  expect(() => frontWall(40, 6, 11, 0)).toThrow(RangeError);
  expect(() => frontWall(40, 6, 0, 3)).toThrow(RangeError);
});
