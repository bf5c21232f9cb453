import type { Point } from '../../../models/curves/segment.ts';
import type { Ink, Typeface } from '../sheet.ts';
import { words } from './inks.ts';

/** From one line of a note to the next, mm. */
export const LEADING = 4;
const NOTE = 2.2;

/** Lines of text below each other, the first's base line at a place; lines too long are broken between words. */
export function notes(
  lines: readonly string[],
  [x, y]: Point,
  room: number,
  typeface: Typeface,
): readonly Ink[] {
  return lines
    .flatMap((text) => broken(text, room, typeface))
    .map((text, i) => words(text, [x, y - i * LEADING], { height: NOTE }));
}

/** How many lines these notes take. */
export function noteLines(lines: readonly string[], room: number, typeface: Typeface): number {
  return lines.reduce((sum, text) => sum + broken(text, room, typeface).length, 0);
}

function broken(text: string, room: number, typeface: Typeface): readonly string[] {
  const out: string[] = [];
  let now = '';
  for (const word of text.split(' ')) {
    const longer = now === '' ? word : `${now} ${word}`;
    if (now !== '' && typeface.width(longer, NOTE) > room) {
      out.push(now);
      now = `   ${word}`;
    } else now = longer;
  }
  return [...out, now];
}
