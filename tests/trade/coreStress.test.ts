import { expect, test } from 'vitest';
import { coreStress, coreStressShare } from '../../src/trade/coreStress.ts';
import { massPerLength } from '../../src/trade/massPerLength.ts';
import { plainString, woundString } from '../../src/trade/stringSpec.ts';
import { tension } from '../../src/trade/tension.ts';

test('a plain string’s stress is ρ(2Lf)², whatever its gauge (derived)', () => {
  for (const diameter of [0.25, 0.3, 0.43]) {
    const string = plainString(diameter);
    expect(coreStress(string, tension(massPerLength(string), 0.645, 329.6276))).toBeCloseTo(
      7850 * (2 * 0.645 * 329.6276) ** 2,
      0,
    );
  }
});

test('a wound string’s core carries all of the tension', () => {
  // 100 N on 0.5 mm: 100 / (π/4 · 0.25) = 509.2958 N/mm² (derived)
  expect(coreStress(woundString(1.3, 0.5), 100) / 1e6).toBeCloseTo(509.2958, 4);
});

test('1 is 2,000 N/mm², what string steel is stressed up to (Zollner, Physics of the Electric Guitar, §1.2)', () => {
  const string = plainString(0.3);
  expect(coreStressShare(string, 2000 * (Math.PI / 4) * 0.09)).toBeCloseTo(1, 12);
});
