import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { fingerprint } from '../sheets/fingerprint.ts';
import { frameBox } from '../sheets/paper/frame.ts';
import type { Paper, Sheet, Typeface } from '../sheets/sheet.ts';
import { pageHead } from '../sheets/text/pageHead.ts';
import { beside, boxed, gap, type Row, stacked, textBlock } from '../sheets/text/row.ts';
import { standing } from '../sheets/text/standing.ts';
import { textPages } from '../sheets/text/textPages.ts';
import type { JobNote } from './jobNote.ts';
import type { PageOptions } from './jobSheet.ts';

/** Heights of capitals, mm, from the one that is best read: the first at which the note has room on one page. */
const SIZES = [2.4, 2.2, 2, 1.8] as const;
/** Width of the column for titles, mm. */
const TITLES = 32;
/** From a box to what stands in it, mm. */
const INSET = 2.5;

/** The job note on one page, stood upright; long remarks set it smaller, and the longest run on to another page. */
export function noteSheet(
  note: JobNote,
  { text }: AcceptedDesign,
  typeface: Typeface,
  { paper, date }: PageOptions,
): readonly Sheet[] {
  const upright = standing(paper);
  const head = {
    ...frameBox(upright),
    title: 'Job note',
    name: note.title,
    fingerprint: fingerprint(text),
    date,
  };
  const set = (height: number) =>
    textPages({
      id: 'note',
      title: 'Job note',
      paper: upright,
      head: pageHead(head, typeface),
      rows: rows(note, upright, height, typeface),
    });
  let pages: readonly Sheet[] = [];
  for (const height of SIZES) {
    pages = set(height);
    if (pages.length === 1) break;
  }
  return pages;
}

function rows({ sections }: JobNote, paper: Paper, height: number, typeface: Typeface): readonly Row[] {
  const { left, right } = frameBox(paper);
  return sections.flatMap(({ title, lines, standsOut }) => {
    const inset = standsOut ? INSET : 0;
    const edges = { left: left + inset, right: right - inset };
    const called = textBlock(title, { ...edges, right: left + TITLES - 3, height, bold: true }, typeface);
    const column = { left: left + TITLES, right: edges.right, height };
    const said = lines.map((line) => stacked([textBlock(line, column, typeface), gap(0.35 * height)]));
    // as many lines as the title is high stand beside it
    let first = 1;
    while (first < said.length && total(said.slice(0, first)) < called.height) first++;
    const all = [beside([called, stacked(said.slice(0, first))]), ...said.slice(first)];
    return [...(standsOut ? [boxed(all, { left, right }, 'frame', 1.5)] : all), gap(1.1 * height)];
  });
}

const total = (list: readonly Row[]): number => list.reduce((sum, row) => sum + row.height, 0);
