import { isInside, overlap, runsThrough } from '../../src/sheets/paper/box.ts';
import { frameBox } from '../../src/sheets/paper/frame.ts';
import { inkLines } from '../../src/sheets/paper/inkLines.ts';
import type { Pen, Sheet, Typeface } from '../../src/sheets/sheet.ts';
import { labelBoxes } from './labelBoxes.ts';

const THICK: ReadonlySet<Pen> = new Set(['outline', 'frame', 'cutting']);

/** What can't be read on a sheet: texts over each other or over thick lines, and whatever leaves the frame. */
export function illegible(sheet: Sheet, typeface: Typeface): readonly string[] {
  const frame = frameBox(sheet.paper);
  const labels = labelBoxes(sheet, typeface);
  const lines = sheet.inks.flatMap((ink) =>
    ink.kind === 'text' ? [] : inkLines(ink).map(([from, to]) => ({ ink, from, to })),
  );
  const where = `${sheet.id} on ${sheet.paper.name}`;
  const texts = labels.flatMap(({ text, box }, i) => [
    ...(isInside(box, frame) ? [] : [`${where}: “${text.text}” leaves the frame`]),
    ...labels
      .slice(i + 1)
      .filter((other) => overlap(box, other.box))
      .map((other) => `${where}: “${text.text}” over “${other.text.text}”`),
    ...(lines.some(({ ink, from, to }) => THICK.has(ink.pen) && runsThrough(box, from, to))
      ? [`${where}: “${text.text}” over a thick line`]
      : []),
  ]);
  const air = 1e-6;
  const out = lines.filter(({ from, to }) =>
    [from, to].some(
      ([x, y]) =>
        x < frame.left - air || x > frame.right + air || y < frame.bottom - air || y > frame.top + air,
    ),
  );
  return [...texts, ...new Set(out.map(({ ink }) => `${where}: a line of ${ink.layer} leaves the frame`))];
}
