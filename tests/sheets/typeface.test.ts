import { describe, expect, test } from 'vitest';
import { lettersNote } from '../../src/sheets/lettersNote.ts';
import { dejaVu } from '../support/dejaVu.ts';

describe('the width of text', () => {
  // DejaVu Sans 2.37, in 2048ths of the em, from memory: a figure is 1303 wide (bold 1425), A 1401, H 1493 high.
  test('is the sum of the font’s advances', () => {
    expect(dejaVu.width('0', 1493)).toBe(1303);
    expect(dejaVu.width('0123456789', 1493)).toBe(13030);
    expect(dejaVu.width('A', 2.5)).toBeCloseTo((2.5 * 1401) / 1493, 12);
    expect(dejaVu.width('0', 1493, true)).toBe(1425);
    expect(dejaVu.width('', 3)).toBe(0);
  });

  test('grows as the height and adds up: nothing is kerned or joined', () => {
    for (const text of ['AVAT', 'fi ffl', 'Ø 4,8 ± 0,1', 'ЁЖ αβ']) {
      const parts = Array.from(text, (c) => dejaVu.width(c, 2.5)).reduce((a, b) => a + b);
      expect(dejaVu.width(text, 2.5), text).toBeCloseTo(parts, 9);
      expect(dejaVu.width(text, 5), text).toBeCloseTo(2 * dejaVu.width(text, 2.5), 9);
    }
  });

  test('the size of the type makes a capital as high as asked', () => {
    expect(dejaVu.size(1493)).toBe(2048);
    expect(dejaVu.size(2.5, true)).toBeCloseTo((2.5 * 2048) / 1493, 12);
  });
});

describe('what is drawn of a text', () => {
  test.each([
    ['as it is', 'Häger ½ ⌀ 5° ±0,1 “q” Привет', 'Häger ½ ⌀ 5° ±0,1 “q” Привет'],
    ['a box for an emoji', 'My 🪵 bridge', 'My □ bridge'],
    ['one box for an emoji of seven code points', '👩‍👩‍👧‍👦', '□'],
    ['a box for each character of a script that the font lacks', '橋', '□'],
    ['a box for half a character', 'a\ud83eb', 'a□b'],
    ['one line for several', 'a\r\nb\tc\u0007d', 'a b c d'],
    ['nothing for what nobody sees', 'so\u00adft\u200b\ufeff', 'soft'],
    ['an accent put on its letter', 'a\u0308', 'ä'],
  ])('%s', (_what, text, drawn) => {
    expect(dejaVu.shown(text)).toBe(drawn);
    expect(dejaVu.shown(text, true)).toBe(drawn);
    expect(dejaVu.width(text, 2.5)).toBe(dejaVu.width(drawn, 2.5));
    expect(dejaVu.shown(drawn), 'drawing twice changes nothing').toBe(drawn);
  });
});

test('names the letters that it lacks, as a reader counts them', () => {
  expect(dejaVu.lacking('Häger ½ “q” Привет')).toEqual([]);
  expect(dejaVu.lacking('橋 of 👩‍👩‍👧‍👦')).toEqual(['橋', '👩‍👩‍👧‍👦']);
});

test('a note names each lacking letter once, at most eight, and none says nothing', () => {
  expect(lettersNote(['Heron', 'Ebony'], dejaVu)).toBeUndefined();
  expect(lettersNote(['橋の橋', '橋'], dejaVu)).toBe(
    `These letters can’t be set on paper: ${['橋', ...dejaVu.lacking('の')].join(' ')}; the fingerprint tells the sheets apart.`,
  );
  expect(lettersNote(['一二三四五六七八九十'], dejaVu)).toContain('paper: 一 二 三 四 五 六 七 八 …;');
});

test('names its fonts', () => {
  expect(dejaVu.family).toBe('DejaVu Sans');
  expect(dejaVu.regular.postscriptName).toBe('DejaVuSans');
  expect(dejaVu.bold.postscriptName).toBe('DejaVuSans-Bold');
});
