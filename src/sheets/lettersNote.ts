import type { FontTypeface } from './typeface.ts';

/** How many letters are named: more would fill the line. */
const MOST = 8;

/** Says which letters of a design's own words the fonts lack, since open boxes stand for them; undefined if none. */
export function lettersNote(
  texts: readonly string[],
  typeface: Pick<FontTypeface, 'lacking'>,
): string | undefined {
  const letters = [...new Set(texts.flatMap((text) => typeface.lacking(text)))];
  if (letters.length === 0) return undefined;
  const named = letters.slice(0, MOST).join(' ') + (letters.length > MOST ? ' …' : '');
  return `These letters can’t be set on paper: ${named}; the fingerprint tells the sheets apart.`;
}
