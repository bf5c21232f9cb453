import { expect, test } from 'vitest';
import type { DesignText } from '../../src/design/design.ts';
import { fieldsOf, GROUPS } from '../../src/design/fields.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { DesignError } from '../../src/design/problem.ts';
import { parseDesignFile, writeDesign } from '../../src/files/designFile.ts';

const design = initialDesign();

function backward(value: object): object {
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, inner]) => [
        key,
        typeof inner === 'object' && !Array.isArray(inner) ? backward(inner as object) : inner,
      ]),
  );
}

test('a design is written as typed, and reads back the same', () => {
  const text = { ...design, top: { ...design.top, tip: '1/8 in', thickness: '9.50' } };
  expect(parseDesignFile(writeDesign(text))).toEqual(text);
});

test('fields stand in the table’s order whatever order they came in, two spaces deep, a line break at the end', () => {
  const written = writeDesign(design);
  expect(writeDesign(backward(design) as DesignText)).toBe(written);
  const json = JSON.parse(written) as Record<string, object>;
  expect(Object.keys(json)).toEqual(['format', 'version', ...GROUPS]);
  for (const group of GROUPS) expect(Object.keys(json[group] ?? {})).toEqual(Object.keys(fieldsOf(group)));
  expect(written).toMatch(/^\{\n {2}"format": "pinbridge-design",\n/);
  expect(written.endsWith('}\n')).toBe(true);
});

test('a byte order mark before the JSON is no harm', () => {
  expect(parseDesignFile(`\uFEFF${writeDesign(design)}`)).toEqual(design);
});

test('what is not JSON is refused with the line and column where it breaks', () => {
  const cases: readonly (readonly [string, string])[] = [
    ['{"a": [1,2,}', 'line 1, column 12'],
    ['{\n  "a": 1\n  "b": 2\n}', 'line 3, column 3'],
    ['{\n  "a": 1,\n}', 'line 3, column 1'],
    ['{"a": 01}', 'line 1, column 7'],
    ["{'a': 1}", 'line 1, column 2'],
    ['{"a": "one\n"}', 'line 1, column 7'],
    ['{"a": NaN}', 'line 1, column 7'],
    ['{"a": 1', 'line 1, column 8'],
    ['{"a": 1} x', 'line 1, column 10'],
    ['[1}', 'line 1, column 3'],
    ['{"a" 1}', 'line 1, column 6'],
    ['{1: 2}', 'line 1, column 2'],
    ['\n\nDesign', 'line 3, column 1'],
    [' ', 'it is empty'],
  ];
  for (const [characters, where] of cases) {
    expect(() => parseDesignFile(characters), characters).toThrow(DesignError);
    expect(() => parseDesignFile(characters), characters).toThrow(where);
  }
});
