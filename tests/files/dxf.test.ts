import { describe, expect, test } from 'vitest';
import { arc, line } from '../../models/curves/segment.ts';
import { asciiText } from '../../src/files/asciiText.ts';
import { type DxfEntity, writeDxf } from '../../src/files/dxf.ts';

const dxfOf = (...entities: DxfEntity[]) =>
  writeDxf([{ name: 'L', colour: 7, linetype: 'CONTINUOUS', entities }], []);

/** The values that stand behind one group code. */
const values = (dxf: string, code: number) =>
  [...dxf.matchAll(/ *(\d+)\r\n(.*)\r\n/g)].filter(([, c]) => Number(c) === code).map(([, , value]) => value);

test('says release 12 and millimetres, in the header and in words', () => {
  const dxf = dxfOf();
  expect(dxf.startsWith('999\r\nUnits: mm\r\n')).toBe(true);
  expect(dxf).toContain('  9\r\n$ACADVER\r\n  1\r\nAC1009\r\n');
  expect(dxf).toContain('  9\r\n$INSUNITS\r\n 70\r\n4\r\n');
  expect(dxf.endsWith('  0\r\nEOF\r\n')).toBe(true);
});

describe('a bulge is the tangent of a quarter of the turn', () => {
  // the format's own definition: half a turn 1, a quarter 0.41421356 (from memory)
  test.each([
    ['half a turn', arc([1, 0], [-1, 0], [0, 0], 1), 1],
    ['half a turn clockwise', arc([1, 0], [-1, 0], [0, 0], -1), -1],
    ['a quarter', arc([1, 0], [0, 1], [0, 0], 1), 0.41421356],
    ['three quarters clockwise', arc([1, 0], [0, 1], [0, 0], -1), -2.41421356],
    ['a straight piece', line([1, 0], [0, 1]), 0],
  ])('%s', (_what, piece, bulge) => {
    const read = values(dxfOf({ kind: 'chain', chain: [piece], closed: false }), 42).slice(1); // the first is the text style's
    expect(Number(read[0])).toBeCloseTo(bulge, 8);
    expect(read[1], 'an open chain ends in a corner of its own').toBe('0');
  });
});

test('is ASCII whatever the remarks, and a remark is one line of at most 255 characters', () => {
  const dxf = writeDxf([], ['Häger “½”\n0\nEOF 🪵', 'x'.repeat(300)]);
  expect(dxf).toMatch(/^[\x20-\x7e\r\n]*$/);
  const lines = values(dxf, 999);
  expect(lines[1]).toBe('Hager "1_2" 0 EOF _');
  expect(lines[2]).toHaveLength(255);
});

test('text in ASCII', () => {
  expect(asciiText('Ångström’s – ‘new’ — 橋 −1')).toBe("Angstrom's - 'new' - _ -1");
});

test.each(['outline', 'TWO WORDS', 'Ö', '', 'X'.repeat(32)])('a layer can’t be called %j', (name) => {
  expect(() => writeDxf([{ name, colour: 7, linetype: 'CENTER', entities: [] }], [])).toThrow(/layer/);
});
