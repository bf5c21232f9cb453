import { expect, test } from 'vitest';
import type { Typeface } from '../../../src/sheets/sheet.ts';
import { wrapped } from '../../../src/sheets/text/wrapped.ts';
import { dejaVu } from '../../support/dejaVu.ts';

/** A typeface whose every letter is as wide as it is high. */
const square: Typeface = { width: (text, height) => [...text].length * height };

test('breaks at blanks, as late as it fits', () => {
  expect(wrapped('one two three four', 1, 9, square)).toEqual(['one two', 'three', 'four']);
  expect(wrapped('one two', 1, 7, square)).toEqual(['one two']);
});

test('breaks a word that has no line of its own within, and goes on after it', () => {
  expect(wrapped('a bcdefghij k', 1, 4, square)).toEqual(['a', 'bcde', 'fghi', 'j k']);
});

test('a letter wider than the room has a line of its own', () => {
  expect(wrapped('ab', 2, 1, square)).toEqual(['a', 'b']);
});

test('never breaks what a reader sees as one letter', () => {
  const family = '👩‍👩‍👧‍👦';
  expect(wrapped(family.repeat(3), 1, 8, square)).toEqual([family, family, family]);
});

test('no text is one empty line; line ends are blanks', () => {
  expect(wrapped('', 1, 9, square)).toEqual(['']);
  expect(wrapped('a\nb\tc', 1, 9, square)).toEqual(['a b c']);
});

test('every line of a real typeface fits, and nothing is lost', () => {
  const text = 'Häger “½” ± 5° – slot’s width, Привет 橋 🪵 fi fl AVA and a wordwithoutanyblank'.repeat(4);
  for (const room of [8, 20, 61.5, 140])
    for (const bold of [false, true]) {
      const lines = wrapped(text, 2.2, room, dejaVu, bold);
      for (const line of lines) expect(dejaVu.width(line, 2.2, bold), line).toBeLessThanOrEqual(room + 1e-6);
      expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
    }
});
