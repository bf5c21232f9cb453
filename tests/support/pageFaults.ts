import { isInside, overlap, runsThrough } from '../../src/sheets/paper/box.ts';
import { frameBox } from '../../src/sheets/paper/frame.ts';
import { inkLines } from '../../src/sheets/paper/inkLines.ts';
import type { Sheet, Typeface } from '../../src/sheets/sheet.ts';
import { labelBoxes } from './labelBoxes.ts';

/** Half a tenth of a millimetre: what rounding may take of a margin. */
const HAIR = 0.05;

/** What is wrong with a page by the boxes of its texts: over the margin, over each other, or under a line. */
export function pageFaults(sheet: Sheet, typeface: Typeface): readonly string[] {
  const labels = labelBoxes(sheet, typeface).filter(({ text }) => text.text !== '');
  const page = frameBox(sheet.paper);
  const grown = {
    left: page.left - HAIR,
    bottom: page.bottom - HAIR,
    right: page.right + HAIR,
    top: page.top + HAIR,
  };
  const lines = sheet.inks.flatMap(inkLines);
  const beyond = lines
    .flat()
    .filter(([x, y]) => x < grown.left || x > grown.right || y < grown.bottom || y > grown.top);
  return [
    ...beyond.map(([x, y]) => `${sheet.id}: a line reaches ${x.toFixed(1)}, ${y.toFixed(1)}`),
    ...labels.flatMap(({ text, box }, i) => [
      ...(isInside(box, grown) ? [] : [`${sheet.id}: “${text.text}” leaves the page`]),
      ...labels
        .slice(i + 1)
        .filter((other) => overlap(box, other.box))
        .map((other) => `${sheet.id}: “${text.text}” and “${other.text.text}” overlap`),
      ...(lines.some(([a, b]) => runsThrough(box, a, b))
        ? [`${sheet.id}: a line runs through “${text.text}”`]
        : []),
    ]),
  ];
}

/** All that is written on a page, in the order in which it is. */
export function pageText({ inks }: Sheet): string {
  return inks.flatMap((ink) => (ink.kind === 'text' ? [ink.text] : [])).join('\n');
}
