import { expect, test } from 'vitest';
import { rootOfFalling } from '../../../../models/curves/rim/root.ts';

const falling = (x: number) => 2 - Math.exp(x / 3);
const ROOT = 3 * Math.LN2;

test.each([
  [0, 5, 1],
  [0, 5, 4.9],
  [4, 5, 3],
  [0, 5, -7],
  [0, 5, 99],
])('from %d, at most %d away, first guessed at %d', (start, reach, guess) => {
  expect(rootOfFalling(falling, start, reach, guess)).toBeCloseTo(ROOT, 9);
});

test('a start that is the root is given back', () => {
  expect(rootOfFalling((x) => 3 - x, 3, 5, 4)).toBe(3);
});

test('without a change of sign: the far end, on the side that the sign points to', () => {
  expect(rootOfFalling(falling, 0, 1, 0.5)).toBe(1);
  expect(rootOfFalling(falling, 9, 2, 8)).toBe(7);
});

test('a corner in the function is no hindrance', () => {
  const bent = (x: number) => (x < 1 ? 0.3 * (1 - x) : 5 * (1 - x));
  expect(rootOfFalling(bent, -1, 4, 2.9)).toBeCloseTo(1, 8);
});
