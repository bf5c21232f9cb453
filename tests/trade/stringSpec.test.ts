import { expect, test } from 'vitest';
import {
  BRONZE_DENSITY_KG_M3,
  coreAreaM2,
  coreDiameterMm,
  plainString,
  woundString,
} from '../../src/trade/stringSpec.ts';

test('a plain string is all core, whatever its core is said to be', () => {
  const string = { ...plainString(0.4), coreMm: 0.1 };
  expect(coreDiameterMm(string)).toBe(0.4);
  expect(coreAreaM2(string)).toBeCloseTo(Math.PI * 0.0002 ** 2, 15);
});

test('a wound string has its own core, a wrap around it, and bronze unless told', () => {
  const string = woundString(1.3, 0.5);
  expect(string.wrapDensityKgM3).toBe(BRONZE_DENSITY_KG_M3);
  expect(coreDiameterMm(string)).toBe(0.5);
});
