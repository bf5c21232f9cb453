import { expect, test } from 'vitest';
import { path, words } from '../../../src/sheets/paper/inks.ts';
import { PAPERS, type Sheet } from '../../../src/sheets/sheet.ts';
import { gap, type Row, stacked, textBlock } from '../../../src/sheets/text/row.ts';
import { standing } from '../../../src/sheets/text/standing.ts';
import { textPages } from '../../../src/sheets/text/textPages.ts';
import { dejaVu } from '../../support/dejaVu.ts';
import { pageFaults, pageText } from '../../support/pageFaults.ts';

const paper = standing(PAPERS.A4);
const line = (text: string) => textBlock(text, { left: 10, right: 200, height: 3 }, dejaVu);
const block = (text: string, height: number, keep = false): Row =>
  stacked([line(text), gap(height - line(text).height)], keep);

const pages = (rows: readonly Row[]) =>
  textPages({ id: 'x', title: 'X', paper, rows, head: (page, of) => block(`Page ${page} of ${of}`, 17) });

test('a standing paper has the lying one’s sides', () => {
  expect(standing(PAPERS.Letter)).toEqual({ name: 'Letter', width: 215.9, height: 279.4 });
  expect(standing(standing(PAPERS.A4))).toEqual(paper);
});

test('pages are filled, numbered and named; one alone has no number', () => {
  // 277 mm inside the margins, 17 of them the head's
  const made = pages(Array.from({ length: 11 }, (_, i) => block(`row ${i}`, 52)));
  expect(made.map(pageText)).toEqual([
    ...[0, 5].map((k) =>
      [`Page ${k / 5 + 1} of 3`, ...[0, 1, 2, 3, 4].map((i) => `row ${k + i}`)].join('\n'),
    ),
    'Page 3 of 3\nrow 10',
  ]);
  expect(made.map(({ id }) => id)).toEqual(['x-1', 'x-2', 'x-3']);
  expect(pages([block('one', 20)]).map(({ id }) => id)).toEqual(['x']);
  expect(made.flatMap((sheet) => pageFaults(sheet, dejaVu))).toEqual([]);
});

test('rows that stay together go to the next page together', () => {
  const [first, second] = pages([block('a', 200), block('b', 40, true), block('c', 30)]).map(pageText);
  expect(first).toBe('Page 1 of 2\na');
  expect(second).toBe('Page 2 of 2\nb\nc');
});

test('more that stays together than a page holds is torn all the same', () => {
  const rows = Array.from({ length: 8 }, (_, i) => block(`row ${i}`, 52, true));
  expect(pages(rows).map(pageText)).toHaveLength(2);
});

test('a row that begins a page has over it what is said again there, and nowhere else', () => {
  const row = (i: number): Row => ({ ...block(`row ${i}`, 60), again: block('again', 20) });
  const made = pages([0, 1, 2, 3, 4, 5, 6, 7].map(row));
  expect(made.map(pageText)).toEqual([
    'Page 1 of 2\nrow 0\nrow 1\nrow 2\nrow 3',
    'Page 2 of 2\nagain\nrow 4\nrow 5\nrow 6\nrow 7',
  ]);
});

test('empty paper makes no page of its own, and begins none', () => {
  expect(pages([block('a', 255), gap(9)]).map(pageText)).toEqual(['Page 1 of 1\na']);
  const [, second] = pages([block('a', 255), gap(9), block('b', 20)]);
  const top = (sheet?: Sheet) => sheet?.inks.flatMap((ink) => (ink.kind === 'text' ? [ink.at[1]] : []));
  expect(top(second)).toEqual(top(pages([block('b', 20)])[0]));
});

test('the finder of faults finds them', () => {
  const faults = (row: Row) => pages([row]).flatMap((sheet) => pageFaults(sheet, dejaVu));
  const wide: Row = { height: 9, inks: () => [words('far out', [190, 100])] };
  expect(faults(wide)).toEqual(['x: “far out” leaves the page']);
  const twice: Row = { height: 9, inks: () => [words('one', [20, 100]), words('two', [21, 101])] };
  expect(faults(twice)).toEqual(['x: “one” and “two” overlap']);
  const struck: Row = {
    height: 9,
    inks: () => [
      words('one', [20, 100]),
      path('text', 'detail', [
        [15, 101],
        [40, 101],
      ]),
    ],
  };
  expect(faults(struck)).toEqual(['x: a line runs through “one”']);
});
