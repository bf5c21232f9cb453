import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import { PAPERS, type Sheet } from '../../src/sheets/sheet.ts';
import { dejaVu } from '../support/dejaVu.ts';
import { onPrint } from '../support/onPrint.ts';
import { hasPoppler, said } from '../support/outsideReaders.ts';
import { inkRuns, raster } from '../support/raster.ts';
import { pictures, test } from './support/page.ts';
import { saved } from './support/saved.ts';

/** Types a value into a field, as a person would. */
async function type(page: Page, group: string, field: string, value: string) {
  const input = page.locator(`#field-${group}-${field}`);
  if (!(await input.isVisible())) await page.locator(`button[aria-controls="group-${group}"]`).click();
  await input.fill(value);
}

const turnTo = (page: Page, tab: string) => page.getByRole('tab', { name: tab, exact: true }).click();
const choose = (page: Page, words: string) => page.locator('.sheets label', { hasText: words }).click();
const front = (page: Page) => page.locator('.page-paper.front');
const texts = (page: Page) => front(page).locator('text').allTextContents();

/** Waits until the sheets are those of the design as typed. */
const drawn = (page: Page) =>
  page.locator('.sheets[data-state="current"] .page-paper.front svg').waitFor({ timeout: 60_000 });

const printOf = async (page: Page) =>
  (await page.locator('.sheets-foot [role="status"]').textContent())?.match(/[0-9a-f]{8}/)?.[0];

describe('sheets, by the page', () => {
  test('stand on the board, drawn by what writes the files', async ({ page }) => {
    await turnTo(page, 'Sheets');
    await drawn(page);
    expect(await page.locator('.page-list button').count()).toBeGreaterThanOrEqual(7);
    const { name, bytes } = await saved(page, page.getByRole('button', { name: 'Save this sheet as SVG' }));
    expect(name).toBe('Untitled-bridge_as-drilled_views.svg');
    const asSaved = bytes.toString('utf8').split('\n').slice(1).join('\n').trim();
    const asSeen = await front(page).evaluate((paper) =>
      new XMLSerializer().serializeToString(paper.firstElementChild as Element),
    );
    expect(asSeen.replaceAll(/\s/g, ''), 'what is seen is what is saved').toBe(asSaved.replaceAll(/\s/g, ''));
    expect(
      await page.evaluate(
        () =>
          [...document.fonts].filter(
            ({ family, status }) => /DejaVu Sans/.test(family) && status === 'loaded',
          ).length,
      ),
      'both faces of the papers are loaded',
    ).toBe(2);
    await page.screenshot({ path: path.join(pictures, 'sheets.png') });
  });

  test('follow a changed number, with a new fingerprint', async ({ page }) => {
    const before = await printOf(page);
    expect(await texts(page)).toContain('153');
    await type(page, 'footprint', 'length', '161');
    await expect.poll(() => texts(page), { timeout: 30_000 }).toContain('161');
    await drawn(page);
    expect(await texts(page)).not.toContain('153');
    const now = await printOf(page);
    expect(now).not.toBe(before);
    expect(await texts(page), 'the fingerprint stands in the title strip').toContain(now);
  });

  test('keep the last good design’s, and say so, while the present one can’t be made', async ({ page }) => {
    const good = await printOf(page);
    await type(page, 'footprint', 'length', 'long');
    await page.locator('.sheets[data-state="stale"]').waitFor();
    expect(await page.locator('.sheets-foot [role="status"]').textContent()).toContain(
      `last good design, ${good}`,
    );
    expect(await texts(page)).toContain('161');
    for (const name of ['Save all as PDF', 'Save this sheet as SVG', 'Print'])
      expect(await page.getByRole('button', { name, exact: true }).isDisabled(), name).toBe(true);
    await type(page, 'footprint', 'length', '161');
    await drawn(page);
    expect(await page.getByRole('button', { name: 'Save all as PDF' }).isDisabled()).toBe(false);
  });

  test('are shown whole, by width, or as large as they are', async ({ page }) => {
    const sizeOf = async () => (await front(page).boundingBox()) ?? { x: 0, width: 0, height: 0 };
    const board = (await page.locator('.sheets-board').boundingBox()) ?? { width: 0, height: 0 };
    const whole = await sizeOf();
    expect(whole.width).toBeLessThanOrEqual(board.width);
    expect(whole.height).toBeLessThanOrEqual(board.height);
    await choose(page, 'true size');
    await expect.poll(async () => (await sizeOf()).width).toBeCloseTo((297 * 96) / 25.4, 0);
    await page.getByRole('button', { name: 'larger', exact: true }).click();
    await expect.poll(async () => (await sizeOf()).width).toBeCloseTo((1.25 * 297 * 96) / 25.4, 0);
    await choose(page, 'whole sheet');
    await expect.poll(async () => (await sizeOf()).width).toBeCloseTo(whole.width, 0);
  });

  test('change with units and paper, which the browser remembers', async ({ page }) => {
    await choose(page, 'inches');
    await choose(page, 'Letter');
    await expect
      .poll(() => front(page).locator('svg').getAttribute('width'), { timeout: 30_000 })
      .toBe('279.4mm');
    await drawn(page);
    // 161 mm is no 64th: 6.339 in
    expect(await texts(page)).toContain('6.339');
    await page.reload();
    await turnTo(page, 'Sheets');
    await drawn(page);
    expect(await front(page).locator('svg').getAttribute('width')).toBe('279.4mm');
    expect(await texts(page)).toContain('6.339');
    await choose(page, 'A4');
    await choose(page, 'mm');
    await expect.poll(() => texts(page), { timeout: 30_000 }).toContain('161');
    await drawn(page);
  });

  test.runIf(hasPoppler)(
    'print at full size, each on a page of its paper, and nothing else',
    async ({ page }) => {
      await mkdir(pictures, { recursive: true });
      for (const [paper, width, height] of [
        ['Letter', 792, 612],
        ['A4', 841.89, 595.28],
      ] as const) {
        await choose(page, paper);
        await expect
          .poll(() => front(page).locator('svg').getAttribute('width'), { timeout: 30_000 })
          .toBe(paper === 'A4' ? '297mm' : '279.4mm');
        await drawn(page);
        const sheets = await page.locator('.page-paper').count();
        const file = path.join(pictures, `printed-${paper}.pdf`);
        await page.pdf({ path: file, preferCSSPageSize: true, printBackground: true });
        const info = said('pdfinfo', '-f', '1', '-l', '99', file);
        expect(info).toMatch(new RegExp(`Pages: +${sheets}\\n`));
        const sizes = [...info.matchAll(/size: +([\d.]+) x ([\d.]+) pts/g)];
        expect(sizes).toHaveLength(sheets);
        for (const [, w, h] of sizes) {
          expect(Math.abs(Number(w) - width), `${paper}, width in points`).toBeLessThan(0.5);
          expect(Math.abs(Number(h) - height), `${paper}, height in points`).toBeLessThan(0.5);
        }
        const bars = await page.locator('.page-paper').evaluateAll((papers) =>
          papers.map((one) => {
            const words = [...one.querySelectorAll('text')].find(({ textContent }) =>
              textContent?.startsWith('100 mm'),
            );
            return [Number(words?.getAttribute('x')), Number(words?.getAttribute('y'))] as const;
          }),
        );
        for (const [i, [x, y]] of bars.entries()) {
          const r = raster(file, i + 1, 254);
          // the bar lies 4 mm under its words; its lower half, which the marks on it don't reach
          const row = Math.floor(10 * (y + 4) + 0.6);
          const inks = Array.from({ length: r.width }, (_, at) => r.ink(at, row));
          const bar = inkRuns(inks).find(({ from }) => Math.abs(from - 10 * x) < 3);
          expect(
            Math.abs((bar?.length ?? 0) - 1000),
            `${paper}, page ${i + 1}: bar in tenths of a mm`,
          ).toBeLessThan(1);
        }
        // the bridge itself, 161 mm since the tests before: where to look is told by the same sheet
        const text = initialDesign();
        const same = acceptDesign({ ...text, footprint: { ...text.footprint, length: '161' } });
        const options = { paper: PAPERS[paper], units: 'mm', holes: 'drilled', date: '' } as const;
        const sheetsOf161 = allSheets(same, dejaVu, options);
        const at = sheetsOf161.findIndex(({ id }) => id === 'outline');
        const { tips } = onPrint(file, at + 1, sheetsOf161[at] as Sheet);
        expect(Math.abs(tips - 161), `${paper}: ${tips} mm from tip to tip`).toBeLessThan(0.1);
        const words = said('pdftotext', file, '-');
        expect(words, 'text is text').toContain('Drawing: views');
        expect(words, 'nothing of the page round it').not.toContain('Save all as PDF');
        expect(words).not.toContain('Middle block');
      }
    },
  );

  test('leave the part as it was', async ({ page }) => {
    await page.locator('.viewport canvas').evaluate((canvas) => canvas.setAttribute('data-first', ''));
    await turnTo(page, 'Sheets');
    await turnTo(page, 'Making');
    await turnTo(page, 'Part');
    expect(await page.locator('.viewport canvas[data-first]').count(), 'the same picture as before').toBe(1);
    expect(await page.locator('.viewport canvas').isVisible()).toBe(true);
    await page.locator('#tab-part').focus();
    await page.keyboard.press('ArrowRight');
    expect(await page.locator('#tab-sheets').getAttribute('aria-selected'), 'arrow keys turn').toBe('true');
    await page.setViewportSize({ width: 900, height: 700 });
    await drawn(page);
    const paper = (await front(page).boundingBox()) ?? { width: 0 };
    const board = (await page.locator('.sheets-board').boundingBox()) ?? { width: 0 };
    expect(paper.width, 'fits a narrow window').toBeLessThanOrEqual(board.width);
    await page.screenshot({ path: path.join(pictures, 'sheets-narrow.png') });
    await page.setViewportSize({ width: 1280, height: 800 });
  });
});
