import { expect, test } from 'vitest';
import { readDesignFile } from '../../src/app/files/readDesignFile.ts';
import { kept } from '../../src/app/store/fieldAt.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { writeDesign } from '../../src/files/designFile.ts';

const design = initialDesign();
const withTop = (top: object) => JSON.stringify({ ...design, top: { ...design.top, ...top } });

test('a saved design opens as it was typed', () => {
  const text = { ...design, top: { ...design.top, tip: '1/8 in', thickness: '9.50' } };
  expect(readDesignFile(writeDesign(text))).toEqual({ ok: true, text });
});

test('a design with values that can’t be made opens, to be mended in the form', () => {
  for (const top of [{ tip: 99 }, { tip: 'thin' }, { tip: '3 furlongs' }, { block: 150 }, { wing: 'wavy' }]) {
    expect(readDesignFile(withTop(top)), JSON.stringify(top)).toMatchObject({ ok: true, text: { top } });
  }
});

test('what the form could not show is refused, and named', () => {
  const refused = (characters: string) => {
    const opened = readDesignFile(characters);
    return opened.ok ? 'opened' : opened.lines.join('\n');
  };
  expect(refused('{')).toMatch(/JSON at line 1/);
  expect(refused('{}')).toMatch(/format/);
  expect(refused('[]')).toMatch(/format/);
  expect(refused(JSON.stringify({ ...design, version: 99 }))).toMatch(/version: 99/);
  expect(refused(JSON.stringify({ ...design, paint: {} }))).toMatch(/paint: an unknown field/);
  expect(refused(withTop({ gloss: 3 }))).toMatch(/top\.gloss: an unknown field/);
  expect(refused(withTop({ tip: undefined }))).toMatch(/top\.tip: nothing/);
  expect(refused(withTop({ tip: null }))).toMatch(/top\.tip: null/);
  expect(refused(withTop({ tip: [3] }))).toMatch(/top\.tip/);
  expect(refused(withTop({ wing: { run: 'straight' } }))).toMatch(/top\.wing/);
  expect(refused(JSON.stringify({ ...design, strings: { ...design.strings, diameters: '0.012' } }))).toMatch(
    /strings\.diameters/,
  );
});

test('typed characters become a number only where the file would show the same characters', () => {
  const cases: readonly (readonly [string, number | string])[] = [
    ['9.5', 9.5],
    ['-3', -3],
    ['0', 0],
    ['3.0', '3.0'],
    ['3.', '3.'],
    ['.5', '.5'],
    ['007', '007'],
    ['1e3', '1e3'],
    ['', ''],
    [' ', ' '],
    ['Infinity', 'Infinity'],
    ['NaN', 'NaN'],
    ['3/8 in', '3/8 in'],
  ];
  for (const [characters, expected] of cases) expect(kept(characters), characters).toBe(expected);
});
