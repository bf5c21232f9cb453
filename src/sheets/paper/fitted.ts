import type { Typeface } from '../sheet.ts';

/** How much smaller than wanted a text may be set so that it fits. */
const LEAST_SHARE = 0.72;

/** A text made to fit a width, mm: first smaller, then cut with an ellipsis. */
export function fitted(
  text: string,
  height: number,
  room: number,
  typeface: Typeface,
  bold = false,
): { readonly text: string; readonly height: number } {
  const width = (t: string, h: number) => typeface.width(t, h, bold);
  const full = width(text, height);
  if (full <= room) return { text, height };
  const least = height * LEAST_SHARE;
  if (width(text, least) <= room) return { text, height: (height * room) / full };
  // by what a reader sees as characters: half an emoji is none
  const letters = Array.from(new Intl.Segmenter('en').segment(text), ({ segment }) => segment);
  let [fits, tooLong] = [0, letters.length];
  while (tooLong - fits > 1) {
    const n = Math.floor((fits + tooLong) / 2);
    if (width(`${letters.slice(0, n).join('')}…`, least) <= room) fits = n;
    else tooLong = n;
  }
  return { text: `${letters.slice(0, fits).join('').trimEnd()}…`, height: least };
}
