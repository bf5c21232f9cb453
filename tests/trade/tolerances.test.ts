import { expect, test } from 'vitest';
import { general, TOLERANCES } from '../../src/trade/tolerances.ts';
import { toleranceText } from '../../src/trade/toleranceText.ts';

// ISO 2768-1, class m, as quoted: >0.5–6 ±0.1, >6–30 ±0.2, >30–120 ±0.3, >120–400 ±0.5
test.each([
  [0.6, 0.1],
  [6, 0.1],
  [6.01, 0.2],
  [30, 0.2],
  [120, 0.3],
  [153, 0.5],
  [400, 0.5],
])('the general tolerance of %f mm is ±%f', (length, off) => {
  expect(general(length)).toMatchObject({ minus: off, plus: off });
});

test('each of our own says why it is needed, and is finer than the general one of its usual size', () => {
  for (const [id, { minus, plus, ground }] of Object.entries(TOLERANCES)) {
    expect(ground, id).toMatch(/^(own|common practice): \S+/);
    expect(minus + plus, id).toBeGreaterThan(0);
  }
  // usual sizes, common practice: thickness 9.5, slot behind the front 11, pins 13 behind the slot
  expect(TOLERANCES.crown.plus).toBeLessThan(general(9.5).plus);
  expect(TOLERANCES['slot-place'].plus).toBeLessThan(general(11).plus);
  expect(TOLERANCES['pin-place'].plus).toBeLessThanOrEqual(general(13).plus);
});

test('a tolerance is written in one way', () => {
  expect(toleranceText({ minus: 0.1, plus: 0.1 })).toBe('±0.1');
  expect(toleranceText({ minus: 0, plus: 0.05 })).toBe('+0.05/0');
  expect(toleranceText({ minus: 0.15, plus: 0.3 })).toBe('+0.3/−0.15');
});
