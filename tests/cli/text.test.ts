import { describe, expect, test } from 'vitest';
import { textTable } from '../../src/cli/textTable.ts';
import { textWidth } from '../../src/cli/textWidth.ts';
import { wrapText } from '../../src/cli/wrapText.ts';

describe('how many columns a text takes', () => {
  // Unicode Standard Annex #11, East Asian Width (from memory)
  test.each([
    ['', 0],
    ['Slot °', 6],
    ['Brücke', 6],
    ['u\u0308', 1],
    ['弦', 2],
    ['한국', 4],
    ['ｗ', 2],
    ['🎸', 2],
    ['👩‍🔧', 2],
    ['❤️', 2],
    ['a\u200Bb', 2],
    ['E♭4', 3],
    ['𠮷', 2],
  ])('%j takes %i', (text, width) => expect(textWidth(text)).toBe(width));
});

test('a table is aligned by columns, wide characters counted twice, short rows filled', () => {
  expect(textTable(['名', 'mm', 'N'], [['弦 1', '2.50', '1'], ['two'], ['3', '10.25', '100']])).toEqual([
    '名       mm    N',
    '弦 1   2.50    1',
    'two',
    '3     10.25  100',
  ]);
});

test('a text is broken at blanks, and a longer word is left whole', () => {
  expect(wrapText('one two three', 8)).toEqual(['one two', 'three']);
  expect(wrapText('弦弦 弦弦 a', 9)).toEqual(['弦弦 弦弦', 'a']);
  expect(wrapText('a-very-long-word b', 5)).toEqual(['a-very-long-word', 'b']);
});
