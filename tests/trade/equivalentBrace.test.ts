import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bendingStiffness } from '../../src/trade/bendingStiffness.ts';
import { equivalentBrace } from '../../src/trade/equivalentBrace.ts';
import { BRACE_SPRUCE } from '../../src/trade/woods.ts';

test('a bar of the bridge’s own width and wood is as high as the bridge: 9 (derived)', () => {
  expect(equivalentBrace(23.9112, 32, 12.3)).toBeCloseTo(9, 9);
});

test('by hand: 23.9112 N·m² are a spruce brace of 8 by 14.92 (its modulus from memory)', () => {
  expect(BRACE_SPRUCE.stiffnessGPa).toBe(10.8);
  expect(equivalentBrace(23.9112, 8, BRACE_SPRUCE.stiffnessGPa)).toBeCloseTo(Math.cbrt(3321), 3);
});

test('the bar has the stiffness it was made for', () => {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(number(1, 80), number(4, 30), number(5, 20), (stiffness, width, modulus) => {
      const height = equivalentBrace(stiffness, width, modulus);
      expect(bendingStiffness((width * height ** 3) / 12, modulus)).toBeCloseTo(stiffness, 8);
    }),
    { seed: 403, numRuns: 200 },
  );
});

test('a bar without width or modulus is refused', () => {
  expect(() => equivalentBrace(20, 0, 10.8)).toThrow(RangeError);
  expect(() => equivalentBrace(20, 8, 0)).toThrow(RangeError);
});
