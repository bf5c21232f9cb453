import { expect, test } from 'vitest';
import { bendingStiffness } from '../../src/trade/bendingStiffness.ts';

/** Standard beams: b·h³/12, and F·l³/(48·EI) with the load in the middle of two supports. */
test('W5: 32 × 9 of E 12.3 GPa: I 1944 mm⁴, EI 2.39112e7 N·mm²; 100 N amid 155 mm bend it by .32445 mm', () => {
  const second = (32 * 9 ** 3) / 12;
  expect(second).toBeCloseTo(1944, 9);
  const stiffness = bendingStiffness(second, 12.3);
  expect(stiffness * 1e6).toBeCloseTo(2.39112e7, 3);
  expect((1000 * (100 * 0.155 ** 3)) / (48 * stiffness)).toBeCloseTo(0.32445, 5);
});
