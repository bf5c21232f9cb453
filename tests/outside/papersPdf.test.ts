import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { writePdf } from '../../src/files/pdf.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import { PAPERS, PENS, type Pen, type Sheet } from '../../src/sheets/sheet.ts';
import { dejaVu } from '../support/dejaVu.ts';
import { onPrint } from '../support/onPrint.ts';
import { hasPoppler, said } from '../support/outsideReaders.ts';
import { inkRuns, type Raster, raster } from '../support/raster.ts';
import { testSheet } from '../support/someSheets.ts';
import { starter } from '../support/starters.ts';

// Read by poppler's tools. A4 and Letter in points: ISO 216 and 11 × 8½ in, at 72 points an inch.

const folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-pdf-'));
const file = path.join(folder, 'papers.pdf');
beforeAll(async () => {
  const facts = { title: 'Häger “½” 🪵', date: new Date('2026-03-04T05:06:07Z') };
  const letter = { ...testSheet, paper: PAPERS.Letter };
  writeFileSync(file, await writePdf([testSheet, letter], dejaVu, facts));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const row = (r: Raster, y: number) => Array.from({ length: r.width }, (_, x) => r.ink(x, y));
const column = (r: Raster, x: number) => Array.from({ length: r.height }, (_, y) => r.ink(x, y));

/** The dot of a page of A4 at a place in mm from its lower left corner. */
const dot = (mm: number, dotsPerMm = 10) => Math.round(mm * dotsPerMm);

describe.runIf(hasPoppler)('a PDF', () => {
  test('has its pages’ sizes, title and date for pdfinfo', () => {
    const info = said('pdfinfo', '-isodates', '-f', '1', '-l', '2', file);
    expect(info).toMatch(/Page +1 size: +841\.89 x 595\.276 pts \(A4\)/);
    expect(info).toMatch(/Page +2 size: +792 x 612 pts \(letter\)/);
    expect(info).toMatch(/Title: +Häger “½” 🪵/);
    expect(info).toMatch(/CreationDate: +2026-03-04T05:06:07Z/);
    expect(info).toMatch(/JavaScript: +no/);
  });

  test('carries parts of its two fonts, with what each letter means', () => {
    const fonts = said('pdffonts', file).split('\n').slice(2, -1);
    expect(fonts).toHaveLength(2);
    expect(fonts[0]).toMatch(/^AAAAAA\+DejaVuSans +CID TrueType +Identity-H +yes yes yes/);
    expect(fonts[1]).toMatch(/^AAAAAB\+DejaVuSans-Bold +CID TrueType +Identity-H +yes yes yes/);
  });

  test('has text that can be read, copied and searched, a box for what the font lacks', () => {
    const text = said('pdftotext', '-layout', '-f', '1', '-l', '1', file, '-');
    for (const one of ['Begins here', 'Halved here', 'Ends here', '“Ø” ½ ± 5° <b> & "q" Привет □ □'])
      expect(text).toContain(one);
    // upright text stands apart from the lines
    expect(said('pdftotext', '-f', '1', '-l', '1', file, '-')).toContain('Upright');
  });

  test.each([
    [1, 'A4', 210],
    [2, 'Letter', 215.9],
  ])('draws bars of 100 mm as 100 mm on page %i (%s), both ways', (page, _name, height) => {
    const r = raster(file, page, 254);
    const lying = inkRuns(row(r, dot(height - 20)))[0];
    expect(lying?.length, 'across, tenths of a mm').toBeCloseTo(1000, 0);
    expect(Math.abs((lying?.from ?? 0) - 300), 'begins 30 mm from the left').toBeLessThan(1);
    const upright = inkRuns(column(r, dot(20)))[0];
    expect(Math.abs((upright?.length ?? 0) - 1000), 'upward').toBeLessThan(1);
    expect(Math.abs((upright?.from ?? 0) - 10 * (height - 130)), 'begins 130 mm from below').toBeLessThan(1);
  });

  test('draws circles and arcs where they are', () => {
    const r = raster(file, 1, 254);
    // the middle of a line 0.25 mm wide
    const middles = (runs: ReturnType<typeof inkRuns>) => runs.map(({ from, length }) => from + length / 2);
    const near = (found: readonly number[], wanted: readonly number[]) => {
      expect(found).toHaveLength(wanted.length);
      wanted.forEach((w, i) => {
        expect(Math.abs((found[i] ?? 0) - w), `line ${i} at ${found[i]}`).toBeLessThan(1);
      });
    };
    const across = row(r, dot(210 - 100))
      .slice(0, 1900)
      .map((ink, x) => (x > 400 ? ink : 0));
    near(middles(inkRuns(across)), [700, 1100]); // the circle's sides
    const slot = row(r, dot(210 - 65))
      .slice(0, 1900)
      .map((ink, x) => (x > 400 ? ink : 0));
    near(middles(inkRuns(slot)), [550, 1250]); // the slot's ends
    // from 130 mm up to 30 mm up: the circle's top and bottom, the slot's sides
    near(middles(inkRuns(column(r, dot(90)).slice(800, 1800))), [100, 500, 600, 700]);
  });

  test.each(Object.entries(PENS).map(([pen, style], i) => [pen as Pen, style, i] as const))(
    'draws the pen %s in its width and dashes',
    (_pen, { width, dashes }, i) => {
      // 50 dots a millimetre round the pen's line of 100 mm
      const y = 210 - (20 + 5 * i);
      const r = raster(file, 1, 1270, [dot(149, 50), dot(y - 2, 50), dot(102, 50), dot(4, 50)]);
      const thick = inkRuns(column(r, dot(1.3, 50)))[0];
      expect(Math.abs((thick?.length ?? 0) / 50 - width), 'width, mm').toBeLessThan(0.02);
      const runs = inkRuns(row(r, dot(2, 50))).map(({ length }) => length / 50);
      const period = dashes.reduce((a, b) => a + b, 0);
      const inks = dashes.filter((_, k) => k % 2 === 0);
      if (period === 0) expect(runs).toHaveLength(1);
      else {
        inks.forEach((ink, k) => {
          expect(Math.abs((runs[k] ?? 0) - ink), `dash ${k}, mm`).toBeLessThan(0.05);
        });
        expect(Math.abs(runs.length - (100 / period) * inks.length), 'dashes in 100 mm').toBeLessThan(2);
      }
    },
  );

  test('places text by what it measures: begins, is halved and ends where it should', () => {
    const r = raster(file, 1, 254);
    const extent = (up: number): readonly [number, number] => {
      const columns = Array.from({ length: 900 }, (_, k) => 1000 + k).filter((x) =>
        Array.from({ length: 30 }, (_, k) => dot(210 - up) - k).some((y) => r.ink(x, y) > 0.5),
      );
      return [Math.min(...columns) / 10, Math.max(...columns) / 10];
    };
    const [begins] = extent(150);
    expect(begins).toBeGreaterThan(149.9);
    expect(begins).toBeLessThan(150.6);
    const [left, right] = extent(155);
    expect(Math.abs((left + right) / 2 - 150)).toBeLessThan(0.4);
    expect(right - left).toBeLessThan(dejaVu.width('Halved here', 2.5));
    expect(right - left).toBeGreaterThan(dejaVu.width('Halved here', 2.5) - 1);
    const [, ends] = extent(160);
    expect(ends).toBeLessThan(150.1);
    expect(ends).toBeGreaterThan(149.4);
  });

  test('draws a capital as high as asked', () => {
    const r = raster(file, 1, 1270, [dot(150, 50), dot(210 - 154, 50), dot(1.8, 50), dot(4.5, 50)]);
    const rows = Array.from({ length: r.height }, (_, y) => y).filter((y) =>
      row(r, y).some((ink) => ink > 0.5),
    );
    expect((rows.length / 50).toFixed(1), 'the B of Begins, mm').toBe('2.5');
  });
});

describe.runIf(hasPoppler)('the sheets of a design, printed', () => {
  test.each(['Plover', 'Wagtail'])(
    '%s: the bridge is as long on paper as it is, beside a true bar',
    async (name) => {
      const accepted = starter(name);
      for (const paper of [PAPERS.A4, PAPERS.Letter]) {
        const sheets = allSheets(accepted, dejaVu, { paper, units: 'mm', holes: 'drilled', date: '' });
        const all = path.join(folder, `${name}-${paper.name}.pdf`);
        writeFileSync(all, await writePdf(sheets, dejaVu, { title: name, date: new Date(0) }));
        const page = sheets.findIndex(({ id }) => id === 'outline');
        const { bar, tips } = onPrint(all, page + 1, sheets[page] as Sheet);
        const { length } = accepted.design.footprint;
        expect(Math.abs(bar - 100), `${paper.name}: bar of ${bar} mm`).toBeLessThan(0.1);
        expect(Math.abs(tips - length), `${paper.name}: ${tips} mm from tip to tip`).toBeLessThan(0.1);
      }
    },
  );
});
