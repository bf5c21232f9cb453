import { expect, test } from 'vitest';
import { readDesignFile } from '../../src/app/files/readDesignFile.ts';
import { placeName } from '../../src/app/form/placeName.ts';
import { kept, placesOf } from '../../src/app/store/fieldAt.ts';
import { GROUPS } from '../../src/design/fields.ts';
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
  const end = '\nOpen another file, or begin from one of the starters.';
  const cases: readonly (readonly [string, string])[] = [
    ['{', 'This file can’t be read: it stops being JSON at line 1, column 2.'],
    ['', 'This file can’t be read: it is empty.'],
    ['{}', 'This is not a bridge design.'],
    ['[]', 'This is not a bridge design.'],
    [JSON.stringify({ ...design, paint: {} }), '“paint”: not known to this version of Pinbridge.'],
    [withTop({ gloss: 3 }), 'Top, “gloss”: not known to this version of Pinbridge.'],
    [withTop({ tip: undefined }), 'Top, wing tip: missing.'],
    [withTop({ tip: null }), 'Top, wing tip: it can’t be null.'],
    [withTop({ tip: [3] }), 'Top, wing tip: it can’t be [3].'],
    [JSON.stringify({ ...design, timber: undefined }), 'Timber: missing.'],
    [JSON.stringify({ ...design, timber: 9 }), 'Timber: it can’t be 9.'],
  ];
  for (const [characters, said] of cases) expect(refused(characters), characters).toBe(`${said}${end}`);
  expect(refused(JSON.stringify({ ...design, version: 99 }))).toMatch(/another version of Pinbridge/);
  expect(refused(withTop({ wing: { run: 'straight' } }))).toMatch(/^Top, wing run: it can’t be/);
  expect(refused(JSON.stringify({ ...design, strings: { ...design.strings, diameters: '0.012' } }))).toMatch(
    /^Strings, diameters: it can’t be/,
  );
  // what the page has no way to follow, and the names that only a file has
  for (const characters of ['{}', withTop({ tip: undefined }), JSON.stringify({ ...design, version: 99 })])
    expect(refused(characters)).not.toMatch(/JSON object|`|pinbridge new|top\.tip|format/);
});

test('a place has the form’s own names, and no name is said twice', () => {
  expect(placeName('top.tip')).toBe('Top, wing tip');
  expect(placeName('strings.diameters.3')).toBe('Strings, diameters');
  expect(placeName('timber')).toBe('Timber');
  const twice = GROUPS.flatMap((group) => placesOf(group).map(({ path }) => placeName(path))).filter(
    (name) => {
      const [head = '', ...rest] = name.toLowerCase().split(', ');
      return rest.join(', ') === head;
    },
  );
  expect(twice).toEqual([]);
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
