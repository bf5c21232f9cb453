import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { likeTyped, stepTyped } from '../../src/app/form/typedForm.ts';
import type { NumberField } from '../../src/design/fields/kinds.ts';
import { FIELDS } from '../../src/design/fields.ts';
import { readQuantity } from '../../src/design/quantity.ts';

const tip: NumberField = FIELDS.top.tip;
const drill: NumberField = FIELDS.pins.drill;
const dome: NumberField = FIELDS.guitar.soundboardRadius;
const angle: NumberField = FIELDS.saddle.angle;

describe('a step keeps the unit and the manner of what was typed', () => {
  test.each<[number | string, NumberField, number, number | string]>([
    [3, tip, 1, 3.1],
    [2.9, tip, 1, 3],
    ['3.0', tip, 1, '3.1'],
    ['3.00', tip, -1, '2.90'],
    ['3,5', tip, 1, '3,6'],
    ['3 mm', tip, 10, '4.0 mm'],
    ['3mm', tip, 1, '3.1mm'],
    // 0.1 mm is 0.0039 in: the nearest halving that a bench rule has is a 64th, the nearest decimal 0.005
    ['3/16 in', drill, 1, '13/64 in'],
    ['3/16"', drill, -1, '11/64"'],
    ['1/8 in', tip, 8, '1/4 in'],
    ['0.1875 in', drill, 1, '0.1925 in'],
    // 100 mm is 0.328 ft
    ['25 ft', dome, 1, '25.5 ft'],
    ["25'", dome, -2, "24.0'"],
    ['2.9°', angle, 1, '3.0°'],
    [0, angle, -1, -0.1],
    ['0.1', angle, -1, '0.0'],
    [6, FIELDS.strings.count, 1, 7],
    [849, FIELDS.timber.density, 1, 854],
    ['0.849 g/cm³', FIELDS.timber.density, 1, '0.854 g/cm³'],
  ])('%j of %o by %i', (typed, field, steps, expected) => {
    expect(stepTyped(typed, field, steps)).toBe(expected);
  });

  test('whole inches carry over: 1 63/64 and a 64th are 2', () => {
    const block: NumberField = { ...FIELDS.top.block, min: 10, max: 200, step: 0.1 };
    expect(stepTyped('1 63/64 in', block, 1)).toBe('2 in');
    expect(stepTyped('1 1/2 in', block, 1)).toBe('1 33/64 in');
  });
});

test('it stops at the ends of the range', () => {
  expect(stepTyped(9.95, tip, 1)).toBe(10);
  expect(stepTyped(10, tip, 1)).toBe(10);
  expect(stepTyped('1.2 mm', tip, -10)).toBe('1.0 mm');
  // 10 mm is 25.2 64ths of an inch
  expect(stepTyped('3/8 in', tip, 10)).toBe('25/64 in');
  expect(stepTyped('25/64 in', tip, 1)).toBe('25/64 in');
});

test('what can’t be read stays as it was', () => {
  for (const typed of ['', 'thick', '3/0 in', '3 furlongs']) expect(stepTyped(typed, tip, 1)).toBe(typed);
});

test('a slid value is written like what was typed, on whole steps', () => {
  expect(likeTyped(4.26, 3, tip)).toBe(4.3);
  expect(likeTyped(4.26, '3.00', tip)).toBe('4.30');
  expect(likeTyped(4.7625, '1/8 in', tip)).toBe('3/16 in');
  expect(likeTyped(7620, '30 ft', dome)).toBe('25.0 ft');
  expect(likeTyped(4.26, 'nonsense', tip)).toBe('4.3');
});

test('any number of steps stays readable and within the range, whatever was typed', () => {
  const typed = fc.oneof(
    fc.double({ min: 1, max: 10, noNaN: true }).map((x) => Number(x.toFixed(3))),
    fc.double({ min: 1, max: 10, noNaN: true }).map((x) => `${x.toFixed(2)} mm`),
    fc.integer({ min: 3, max: 25 }).map((n) => `${n}/64 in`),
    fc.integer({ min: 4, max: 39 }).map((n) => `0.${String(n).padStart(2, '0')}in`),
  );
  fc.assert(
    fc.property(typed, fc.integer({ min: -200, max: 200 }), (was, steps) => {
      const next = stepTyped(was, tip, steps);
      const read = readQuantity(next, 'length');
      expect(read.ok, `${was} by ${steps} became ${next}`).toBe(true);
      if (read.ok) {
        expect(read.value).toBeGreaterThanOrEqual(1 - 1e-6);
        expect(read.value).toBeLessThanOrEqual(10 + 1e-6);
      }
      expect(typeof next).toBe(typeof was);
    }),
    { seed: 20260101, numRuns: 500 },
  );
});
