import { PDFDocument } from '@cantoo/pdf-lib';
import { afterEach, expect, test, vi } from 'vitest';
import { writePdf } from '../../src/files/pdf.ts';
import { PAPERS, type Sheet } from '../../src/sheets/sheet.ts';
import { dejaVu } from '../support/dejaVu.ts';
import { testSheet, words } from '../support/someSheets.ts';

const facts = { title: 'Heron', date: new Date('2026-03-04T05:06:07Z') };
const blank: Sheet = { id: 'blank', title: 'Blank', paper: PAPERS.Letter, scale: 1, inks: [] };

afterEach(() => {
  vi.useRealTimers();
});

test('the same sheets and date give the same bytes, whatever the day', async () => {
  const first = await writePdf([testSheet, blank], dejaVu, facts);
  vi.useFakeTimers({ now: new Date('2031-01-01'), toFake: ['Date'] });
  expect(await writePdf([testSheet, blank], dejaVu, facts)).toEqual(first);
  const later = await writePdf([testSheet, blank], dejaVu, { ...facts, date: new Date('2027-01-01') });
  expect(later).not.toEqual(first);
});

test('pages are as large as their papers, to a thousandth of a point', async () => {
  const doc = await PDFDocument.load(await writePdf([testSheet, blank], dejaVu, facts));
  const [a4, letter] = doc.getPages().map((page) => page.getSize());
  expect(a4?.width).toBeCloseTo(841.89, 3);
  expect(a4?.height).toBeCloseTo(595.276, 3);
  expect(letter).toEqual({ width: 792, height: 612 });
});

test('says what it is called, when it was made and that printers should not scale it', async () => {
  const title = 'a/b "q" 🪵 \ud83e';
  const doc = await PDFDocument.load(await writePdf([blank], dejaVu, { ...facts, title }), {
    updateMetadata: false,
  });
  expect(doc.getTitle()).toBe('a/b "q" 🪵 \ufffd');
  expect(doc.getCreationDate()).toEqual(facts.date);
  expect(doc.getModificationDate()).toEqual(facts.date);
  expect(doc.catalog.getViewerPreferences()?.getPrintScaling()).toBe('None');
});

test('carries only the letters it needs', async () => {
  expect((await writePdf([testSheet], dejaVu, facts)).length).toBeLessThan(60_000);
});

test.each([
  ['nothing', ''],
  ['blanks', '  \n '],
  ['what the font lacks', '🪵'],
  ['300 characters', 'x'.repeat(300)],
])('a sheet whose only text is %s can be written', async (_what, text) => {
  const bytes = await writePdf([{ ...blank, inks: [words(text, [10, 10])] }], dejaVu, facts);
  expect((await PDFDocument.load(bytes)).getPageCount()).toBe(1);
});

test('no sheets, or a place that is no number, are refused', async () => {
  await expect(writePdf([], dejaVu, facts)).rejects.toThrow(/no sheet/);
  const lost = { ...blank, inks: [words('lost', [Number.NaN, 0])] };
  await expect(writePdf([lost], dejaVu, facts)).rejects.toThrow(/NaN can't be written/);
});
