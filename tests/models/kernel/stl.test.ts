import { expect, test } from 'vitest';
import { stlHeader } from '../../../models/kernel/stl.ts';

/** The characters of an STL's head, without the zeros that fill it. */
const read = (name: string) =>
  new TextDecoder('utf-8', { fatal: true }).decode(stlHeader(name)).replace(/\0+$/, '');

test('an STL’s head names the part and its unit, and is 80 bytes whatever the name', () => {
  expect(read('Heron')).toBe('Pinbridge, Heron, mm');
  expect(read('solid')).toBe('Pinbridge, solid, mm');
  expect(read('x'.repeat(300))).toBe(`Pinbridge, ${'x'.repeat(65)}, mm`);
  // three bytes each: 21 of them are 63, a 22nd would be cut in two
  expect(read('橋'.repeat(40))).toBe(`Pinbridge, ${'橋'.repeat(21)}, mm`);
  for (const name of ['', 'Heron', 'x'.repeat(300), '橋'.repeat(40)])
    expect(stlHeader(name)).toHaveLength(80);
});
