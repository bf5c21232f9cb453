import { expect, test } from 'vitest';
import { acrossStrings } from '../../src/trade/acrossStrings.ts';

const PLACES = [27.5, 16.5, 5.5, -5.5, -16.5, -27.5];

test('linear from treble to bass: 1.9 to 2.4 over six strings (derived)', () => {
  const values = acrossStrings(PLACES, 1.9, 2.4);
  [1.9, 2, 2.1, 2.2, 2.3, 2.4].forEach((v, i) => {
    expect(values[i], `string ${i + 1}`).toBeCloseTo(v, 12);
  });
});

test('a left-handed guitar’s strings have the same values', () => {
  const left = acrossStrings(
    PLACES.map((x) => -x),
    1.9,
    2.4,
  );
  expect(left).toEqual(acrossStrings(PLACES, 1.9, 2.4));
});

test('by place: the strings of a course are nearly alike, whatever the count', () => {
  const values = acrossStrings([27, 25, 0, -2, -25, -27], 1, 2);
  expect((values[1] ?? 0) - (values[0] ?? 0)).toBeCloseTo(2 / 54, 12);
  expect((values[2] ?? 0) - (values[1] ?? 0)).toBeCloseTo(25 / 54, 12);
});

test('one string, or all at one place, is refused', () => {
  expect(() => acrossStrings([3], 1, 2)).toThrow(RangeError);
  expect(() => acrossStrings([3, 3], 1, 2)).toThrow(RangeError);
  expect(() => acrossStrings([], 1, 2)).toThrow(RangeError);
});
