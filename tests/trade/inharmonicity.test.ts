import { expect, test } from 'vitest';
import { inharmonicity } from '../../src/trade/inharmonicity.ts';
import { massPerLength } from '../../src/trade/massPerLength.ts';
import { coreAreaM2, plainString, STEEL_MODULUS_PA, woundString } from '../../src/trade/stringSpec.ts';
import { partialCents } from '../support/partialCents.ts';

const string = plainString(0.3048);
const b = inharmonicity(string, 103.62, 0.64516);

test('S7: .3048 mm at 103.62 N over .64516 m (derived; formula Fletcher 1964, as quoted elsewhere)', () => {
  expect(Math.abs(b / 1.939e-5 - 1)).toBeLessThan(1e-3);
  expect(Math.abs(partialCents(b, 10) / 1.6768 - 1)).toBeLessThan(1e-3);
});

test('S8: B/2 = (π/2)·E·A²·μ·f²/T² (Feynman’s letter, Physics Today 62(12) 46 (2009))', () => {
  const mass = massPerLength(string);
  const hz = Math.sqrt(103.62 / mass) / (2 * 0.64516);
  const other = ((Math.PI / 2) * STEEL_MODULUS_PA * coreAreaM2(string) ** 2 * mass * hz ** 2) / 103.62 ** 2;
  expect(Math.abs(b / 2 - 9.695e-6)).toBeLessThan(1e-8);
  expect(Math.abs(other - 9.695e-6)).toBeLessThan(1e-8);
  expect(other).toBeCloseTo(b / 2, 15);
});

test('a wound string is as stiff as its core', () => {
  expect(inharmonicity(woundString(1.3, 0.3048), 103.62, 0.64516)).toBe(b);
});
