import { expect, test } from 'vitest';
import { FORMULAS } from '../../src/trade/formulas.ts';
import { SHEAR_SHARE, shearModulus } from '../../src/trade/shearModulus.ts';

/** USDA Wood Handbook, GTR-190, sugar maple, as quoted elsewhere: G_LR/E_L .111, G_LT/E_L .063. */
test('half way between quarter-sawn and flat-sawn', () => {
  expect(shearModulus(12.6)).toBeCloseTo((12.6 * 0.111 + 12.6 * 0.063) / 2, 12);
  expect(shearModulus(12.27)).toBeCloseTo(1.06749, 5);
});

test('what is left open is what its formula says', () => {
  const off = 100 * (SHEAR_SHARE.quarterSawn / shearModulus(1) - 1);
  expect(100 * (1 - SHEAR_SHARE.flatSawn / shearModulus(1))).toBeCloseTo(off, 9);
  expect(FORMULAS.twisting.grounds[0].what).toContain(`± ${off.toFixed(0)} %`);
});
