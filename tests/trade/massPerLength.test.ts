import { expect, test } from 'vitest';
import { massPerLength } from '../../src/trade/massPerLength.ts';
import { plainString, woundString } from '../../src/trade/stringSpec.ts';

const IN = 25.4;

test.each([
  // derived; the density of steel, 7850, is from memory
  [0.012, 5.72782e-4],
  [0.013, 6.72223e-4],
  [0.016, 1.01828e-3],
])('S4: plain %s in weighs %s kg/m', (inches, massKgM) => {
  expect(Math.abs(massPerLength(plainString(inches * IN)) - massKgM)).toBeLessThan(1e-8);
});

test.each([
  // derived; the density of bronze, 8800, is from memory
  [0.053, 0.018, 9.9915e-3],
  [0.042, 0.016, 6.2995e-3],
  [0.032, 0.014, 3.6794e-3],
  [0.024, 0.011, 2.0748e-3],
])('S5: wound %s on %s in weighs %s kg/m', (outside, core, massKgM) => {
  expect(Math.abs(massPerLength(woundString(outside * IN, core * IN)) - massKgM)).toBeLessThan(1e-7);
});

test('S5: a wrap of touching turns weighs what its wire does, coiled (derived)', () => {
  // wire of diameter w, one turn each w of length, around a core d: π(d + w) of wire a turn, of area πw²/4
  const [d, w, density] = [0.4e-3, 0.3e-3, 8800];
  const wire = (density * (Math.PI * w ** 2 * Math.PI * (d + w))) / 4 / w;
  const bare = massPerLength(plainString(0.4));
  expect(massPerLength(woundString(1, 0.4, density)) - bare).toBeCloseTo(wire, 12);
});

test('another steel weighs in proportion', () => {
  expect(massPerLength(plainString(0.3), 7800) / massPerLength(plainString(0.3), 7850)).toBeCloseTo(
    7800 / 7850,
    12,
  );
});
