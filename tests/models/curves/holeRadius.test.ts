import { expect, test } from 'vitest';
import { holeRadius } from '../../../models/curves/holeRadius.ts';

test('a hole is as wide as its outline says between two corners, and as at its ends beyond them', () => {
  const outline = [
    [0, -2],
    [2, -2],
    [2, 4],
    [3, 6],
    [0, 6],
  ] as const;
  const cases = [
    [-5, 2],
    [-2, 2],
    [0, 2],
    [4, 2],
    [5, 2.5],
    [6, 3],
    [9, 3],
  ] as const;
  for (const [z, radius] of cases) expect(holeRadius(outline, z), `at ${z}`).toBeCloseTo(radius, 12);
});
