import { expect, test } from 'vitest';
import {
  BRONZE_DENSITY_KG_M3,
  coreAreaM2,
  coreDiameterMm,
  plainString,
  woundString,
  wrapWireMm,
} from '../../src/trade/stringSpec.ts';

test('a plain string is all core, whatever its core is said to be', () => {
  const string = { ...plainString(0.4), coreMm: 0.1 };
  expect(coreDiameterMm(string)).toBe(0.4);
  expect(coreAreaM2(string)).toBeCloseTo(Math.PI * 0.0002 ** 2, 15);
  expect(wrapWireMm(string)).toBe(0);
});

test('a wound string has its own core, a wrap around it, and bronze unless told', () => {
  const string = woundString(1.3, 0.5);
  expect(string.wrapDensityKgM3).toBe(BRONZE_DENSITY_KG_M3);
  expect(coreDiameterMm(string)).toBe(0.5);
  expect(wrapWireMm(string)).toBeCloseTo(0.4, 12);
});

test('a core thicker than its string shows as a wrap below nothing', () => {
  expect(wrapWireMm(woundString(0.5, 0.6))).toBeLessThan(0);
});
