import type { Typeface } from '../sheet.ts';

const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * A text in lines no wider than `room`, mm: broken at blanks, and within a word that has no room in a line of its own.
 * Words are measured one by one: across blanks letters don't change each other.
 */
export function wrapped(
  text: string,
  height: number,
  room: number,
  typeface: Typeface,
  bold = false,
): readonly string[] {
  const width = (word: string) => typeface.width(word, height, bold);
  const blank = width(' ');
  const lines: string[] = [];
  let [line, used] = ['', 0];
  for (const word of text.replace(/\p{Cc}/gu, ' ').split(/ +/)) {
    const wide = width(word);
    if (line !== '' && used + blank + wide <= room) {
      line = `${line} ${word}`;
      used += blank + wide;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = wide <= room ? [word] : broken(word, (piece) => width(piece) <= room);
    lines.push(...pieces.slice(0, -1));
    line = pieces[pieces.length - 1] ?? '';
    used = pieces.length === 1 ? wide : width(line);
  }
  return [...lines, line];
}

/** A word in pieces that fit, none without a letter. */
function broken(word: string, fits: (line: string) => boolean): readonly string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const { segment } of letters.segment(word)) {
    if (piece !== '' && !fits(piece + segment)) {
      pieces.push(piece);
      piece = segment;
    } else piece += segment;
  }
  return [...pieces, piece];
}
