import { describe, expect, test } from 'vitest';
import { ACCEPTED, readQuantity } from '../../src/design/quantity.ts';

/** Reads a length that is expected to be one. */
function mm(typed: number | string): number {
  const read = readQuantity(typed, 'length');
  if (!read.ok) throw new Error(`${JSON.stringify(typed)} was refused: ${read.why}`);
  return read.value;
}

describe('a length is read as a person types it', () => {
  // derived: 1 in = 25.4 mm and 1 ft = 304.8 mm exactly, by the international agreement of 1959
  test.each<[number | string, number]>([
    [9.5, 9.5],
    ['-2.5', -2.5],
    ['−2.5 mm', -2.5],
    ['9.5', 9.5],
    ['9,5', 9.5],
    ['9,5 mm', 9.5],
    ['.5', 0.5],
    ['5.', 5],
    [' 9.5  mm ', 9.5],
    ['9.5MM', 9.5],
    ['1 cm', 10],
    ['0.02 m', 20],
    ['3/8 in', 9.525],
    ['3/8"', 9.525],
    ['3 / 8 in', 9.525],
    ['3/32 in', 2.38125],
    ['0.375in', 9.525],
    ['1 1/2"', 38.1],
    ['1-1/2"', 38.1],
    ['1  1/2 inches', 38.1],
    ['1 1/2″', 38.1],
    ['25 ft', 7620],
    ["25'", 7620],
    ['25′', 7620],
    ['16 inch', 406.4],
    ['-3/8 in', -9.525],
    ['+2', 2],
    ['1e1', 10],
    ['1e-1 in', 2.54],
    ['6/4', 1.5],
    ['0', 0],
  ])('%j is %d mm', (typed, value) => {
    expect(mm(typed)).toBeCloseTo(value, 12);
  });

  test('a fraction stays exact until the unit is applied', () => {
    expect(mm('1/3 in') * 3).toBeCloseTo(25.4, 13);
    expect(mm('3 1/3"')).toBeCloseTo(254 / 3, 12);
  });
});

describe('other quantities', () => {
  test.each([
    ['2.5', 'angle', 2.5],
    ['2.5°', 'angle', 2.5],
    ['-3 deg', 'angle', -3],
    ['2 1/2 degrees', 'angle', 2.5],
    ['12', 'count', 12],
    ['849 kg/m³', 'density', 849],
    ['849kg/m3', 'density', 849],
    ['0.849 g/cm³', 'density', 849],
    ['12.3 GPa', 'modulus', 12.3],
    ['12300 MPa', 'modulus', 12.3],
  ] as const)('%j as %s is %d', (typed, kind, value) => {
    const read = readQuantity(typed, kind);
    expect(read.ok && read.value).toBeCloseTo(value, 12);
  });
});

describe('what is no quantity is refused with what is accepted', () => {
  test.each<[number | string]>([
    [''],
    ['   '],
    ['mm'],
    ['abc'],
    ['NaN'],
    ['Infinity'],
    ['-'],
    ['1/0 in'],
    ['1 1/0"'],
    ['1e999'],
    [`${'9'.repeat(400)}`],
    [`${'9'.repeat(400)}/1 in`],
    [Number.NaN],
    [Number.POSITIVE_INFINITY],
    [Number.NEGATIVE_INFINITY],
  ])('%j', (typed) => {
    expect(readQuantity(typed, 'length')).toEqual({
      ok: false,
      why: 'not-a-value',
      accepted: ACCEPTED.length,
    });
  });

  test.each([
    ['9.5 kg', 'length'],
    ['9.5 furlongs', 'length'],
    ['9.5 mm mm', 'length'],
    ['1/2/3 in', 'length'],
    ['1,000.5 mm', 'length'],
    ['9.5.1', 'length'],
    ['3°', 'length'],
    ['3 mm', 'angle'],
    ['3 mm', 'count'],
    ['3 GPa', 'density'],
    ['3 kg/m³', 'modulus'],
    ['3 constructor', 'length'],
    ['3 toString', 'length'],
    ['3 __proto__', 'length'],
  ] as const)('%j as %s has a wrong unit', (typed, kind) => {
    expect(readQuantity(typed, kind)).toEqual({ ok: false, why: 'wrong-unit', accepted: ACCEPTED[kind] });
  });
});
