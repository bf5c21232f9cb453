import { describe, expect, test } from 'vitest';
import { CENTS_PER_LN } from '../../src/trade/centsError.ts';
import { stiffnessFactor } from '../../src/trade/endCondition.ts';
import { inharmonicity } from '../../src/trade/inharmonicity.ts';
import { LIGHT_SET, lightSetups, lightTensions, SCALE_MM } from '../support/lightSet.ts';
import { partialCents } from '../support/partialCents.ts';
import { type End, stiffStringRatio } from '../support/stiffString.ts';

/* The vibrating stiff string solved as a matrix eigenproblem, against the formulas for it (derived). */

const cents = (ratio: number) => CENTS_PER_LN * Math.log(ratio);
const ENDS: readonly (readonly [alpha: number, ends: readonly [End, End]])[] = [
  [0, ['pinned', 'pinned']],
  [1, ['pinned', 'clamped']],
  [2, ['clamped', 'clamped']],
];

describe('the matrix road itself', () => {
  test.each([0.002, 0.01, 0.05])('between pinned ends is exact: √(1 + π²b²), b = %s', (b) => {
    expect(stiffStringRatio(b, ['pinned', 'pinned'])).toBeCloseTo(Math.sqrt(1 + Math.PI ** 2 * b * b), 7);
  });

  test('between clamped ends solves the beam’s own equation', () => {
    // y = cosh and cos on either side of the middle: the even modes of b²y'''' − y'' = λy with y = y' = 0 at ±1/2 obey
    // k·tan(k/2) = −q·tanh(q/2), with q² − k² = 1/b² and k²q² = λ/b²
    const b = 0.02;
    const q = (k: number) => Math.sqrt(k * k + 1 / (b * b));
    const off = (k: number) => k * Math.sin(k / 2) + q(k) * Math.tanh(q(k) / 2) * Math.cos(k / 2);
    let [low, high] = [Math.PI, 1.5 * Math.PI];
    expect(off(low) * off(high)).toBeLessThan(0);
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (off(low) * off(middle) > 0) low = middle;
      else high = middle;
    }
    const lambda = (low * q(low) * b) ** 2;
    expect(stiffStringRatio(b, ['clamped', 'clamped'])).toBeCloseTo(Math.sqrt(lambda) / Math.PI, 6);
  });
});

describe.each(ENDS)(
  'I2’s F(B) with α = %i is the eigenproblem’s fundamental within 0.05 cent',
  (alpha, ends) => {
    const setups = lightSetups(alpha);
    test.each([
      ['E4, open', 0, 1],
      ['B3, open', 1, 1],
      ['B3 at fret 12', 1, 2],
      ['G3, open', 2, 1],
      ['E2, open', 5, 1],
      ['E2 at fret 12', 5, 2],
    ] as const)('%s', (_name, string, shorter) => {
      const b = (setups[string]?.bending ?? Number.NaN) * shorter;
      const off = cents(stiffnessFactor(b, alpha) / stiffStringRatio(b, ends));
      expect(Math.abs(off), `b = ${b}: off by ${off} cent`).toBeLessThan(0.05);
    });
  },
);

test('S7’s partials are the eigenproblem’s higher modes between pinned ends, within 0.05 cent', () => {
  const [setup] = lightSetups(0);
  const [string] = LIGHT_SET;
  if (!setup || !string) throw new Error('the set has no first string');
  const b = inharmonicity(string, lightTensions[0] ?? Number.NaN, SCALE_MM / 1000);
  for (const n of [2, 5, 10]) {
    const ratio = stiffStringRatio(setup.bending, ['pinned', 'pinned'], n * n);
    expect(Math.abs(cents(ratio / n) - partialCents(b, n)), `partial ${n}`).toBeLessThan(0.05);
  }
});
