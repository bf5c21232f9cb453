import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { writeZip } from '../../src/files/zip.ts';

const date = new Date('2026-03-04T05:06:08Z');
const bytes = (text: string) => new TextEncoder().encode(text);

test('holds its files in their order and gives the same bytes each time', () => {
  const files = [
    { name: 'b/Häger.txt', bytes: bytes('one') },
    { name: 'a.txt', bytes: bytes('two '.repeat(1000)) },
  ];
  const zip = writeZip(files, date);
  expect(writeZip(files, new Date(date))).toEqual(zip);
  expect(Object.entries(unzipSync(zip))).toEqual(files.map(({ name, bytes: b }) => [name, b]));
  expect(zip.length).toBeLessThan(500);
});

test('its time is of the clock of UTC, wherever it is made', () => {
  const zip = writeZip([{ name: 'a', bytes: bytes('') }], date);
  const view = new DataView(zip.buffer, zip.byteOffset);
  // MS-DOS time and date of the first file (from memory): hours 11–15, minutes 5–10, seconds/2; years since 1980
  expect(view.getUint16(10, true)).toBe((5 << 11) | (6 << 5) | 4);
  expect(view.getUint16(12, true)).toBe(((2026 - 1980) << 9) | (3 << 5) | 4);
});

test.each([
  '',
  '/etc/passwd',
  '../a',
  'a/../b',
  'a//b',
  'a/',
  '.',
  'a\\b',
  'C:a',
  'say "hi"',
  'a?',
  'line\nend',
  'half \ud83e',
  'ends in a dot.',
  'ends in a blank ',
  'x'.repeat(300),
  `${'橋'.repeat(86)}.txt`,
])('refuses the name %j', (name) => {
  expect(() => writeZip([{ name, bytes: bytes('') }], date)).toThrow(/is no name for a file/);
});

test('refuses a name that stands there twice for some system', () => {
  const two = (a: string, b: string) => [a, b].map((name) => ({ name, bytes: bytes('') }));
  expect(() => writeZip(two('a.txt', 'A.TXT'), date)).toThrow(/twice/);
  expect(() => writeZip(two('\u00e4', 'a\u0308'), date)).toThrow(/twice/);
});
