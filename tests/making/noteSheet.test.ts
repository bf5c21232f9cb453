import { expect, test } from 'vitest';
import { STARTER_FILES } from '../../src/cli/starterFiles.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { jobNote } from '../../src/making/jobNote.ts';
import { noteSheet } from '../../src/making/noteSheet.ts';
import { readOrder } from '../../src/making/order.ts';
import { fingerprint } from '../../src/sheets/fingerprint.ts';
import { PAPERS } from '../../src/sheets/sheet.ts';
import { CAUTIONS } from '../../src/trade/cautions.ts';
import { designText } from '../support/change.ts';
import { dejaVu } from '../support/dejaVu.ts';
import { acceptedDesigns } from '../support/designs.ts';
import { pageFaults, pageText } from '../support/pageFaults.ts';

const made = (json: unknown, order: object, paper: (typeof PAPERS)['A4' | 'Letter'] = PAPERS.A4) => {
  const accepted = acceptDesign(json);
  const note = jobNote(accepted, readOrder(order));
  return { accepted, note, pages: noteSheet(note, accepted, dejaVu, { paper, date: '2031-05-17' }) };
};
const everything = { quantity: 12, deadline: '2031-06-01', holes: 'reamed', sandingAllowance: 0.25 };
const flat = (text: string) => text.replace(/\s+/g, ' ');

test('one page for every starter and random designs, nothing over each other or off the page', () => {
  const designs = [
    ...STARTER_FILES.map(({ json }) => json),
    ...acceptedDesigns(12, 31).accepted.map(({ text }) => text),
  ];
  for (const [i, json] of designs.entries()) {
    const { pages } = made(json, everything, i % 2 === 0 ? PAPERS.A4 : PAPERS.Letter);
    expect(pages, `design ${i}`).toHaveLength(1);
    expect(pages.flatMap((sheet) => pageFaults(sheet, dejaVu))).toEqual([]);
  }
});

test('says all that the note says, whose it is and what can hurt', () => {
  const { pages, note, accepted } = made(designText({ 'guitar.name': 'A/b “c” 🪵' }), everything);
  const text = flat(pages.map(pageText).join('\n'));
  for (const { lines } of note.sections) for (const line of lines) expect(text).toContain(flat(line).trim());
  expect(text).toContain('Job note: A/b “c” 🪵');
  expect(text).toContain(`Design ${fingerprint(accepted.text)} 2031-05-17 Page 1 of 1`);
  expect(text).toContain(CAUTIONS.dust.text);
});

test('remarks of 2000 characters still have room on the page, and 40 lines on two at most', () => {
  const long = made(designText(), { remarks: 'Twenty characters ..'.repeat(100) });
  expect(long.pages).toHaveLength(1);
  expect(long.pages.flatMap((sheet) => pageFaults(sheet, dejaVu))).toEqual([]);
  const one = made(designText(), { remarks: 'x'.repeat(2000) });
  expect(one.pages.flatMap((sheet) => pageFaults(sheet, dejaVu))).toEqual([]);
  const tall = made(designText(), { remarks: Array.from({ length: 40 }, (_, i) => `line ${i}`).join('\n') });
  expect(tall.pages.length).toBeLessThan(3);
  expect(tall.pages.flatMap((sheet) => pageFaults(sheet, dejaVu))).toEqual([]);
  const text = tall.pages.map(pageText).join('\n').split('\n');
  for (let i = 0; i < 40; i++) expect(text).toContain(`line ${i}`);
});

test('no remarks are said to be none', () => {
  expect(made(designText(), { remarks: '' }).pages.map(pageText).join()).toContain('None.');
});
