import { expect, test } from 'vitest';
import { decimal } from '../../src/files/decimal.ts';

test.each([
  [0, '0'],
  [-0, '0'],
  [-1e-9, '0'],
  [100, '100'],
  [1e-5, '0.00001'],
  [12.5, '12.5'],
  [-1.23456789, '-1.23457'],
  [0.1 + 0.2, '0.3'],
])('%f is written as %s', (value, text) => {
  expect(decimal(value)).toBe(text);
});

test('whole numbers keep their zeros', () => {
  expect(decimal(1200, 0)).toBe('1200');
});

test.each([Number.NaN, Number.POSITIVE_INFINITY])('%f is refused', (value) => {
  expect(() => decimal(value)).toThrow(/can't be written/);
});
