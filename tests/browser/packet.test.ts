import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { hasPoppler, said } from '../support/outsideReaders.ts';
import { pictures, test } from './support/page.ts';
import { saved } from './support/saved.ts';

const NAME = 'Heron "No. 7" / Ω 🪵';
const SAFE = 'Heron-No-7-Ω';

const dialog = (page: Page) => page.locator('dialog[open]');
const button = (page: Page, name: string) => dialog(page).getByRole('button', { name, exact: true });

describe('files for the shop, by the page', () => {
  test('every file is saved under a name that every system takes', async ({ page }) => {
    await page.getByRole('button', { name: 'Untitled bridge' }).click();
    await page.locator('#field-guitar-name').fill(NAME);
    await page.locator('.viewport[data-stamp="solid"]').waitFor({ timeout: 90_000 });
    await page.getByRole('button', { name: 'Files for the shop' }).click();
    await page.screenshot({ path: path.join(pictures, 'files.png') });
    const files = {
      'Write STEP': [`${SAFE}_as-drilled.step`, 'ISO-10303-21'],
      'Write STL': [`${SAFE}_as-drilled_mm_facets-0.02.stl`, ''],
      'Write 3MF': [`${SAFE}_as-drilled.3mf`, 'PK'],
      'Write DXF': [`${SAFE}_as-drilled_plan.dxf`, ''],
      'Write the drawing': [`${SAFE}_as-drilled_drawing.pdf`, '%PDF-'],
      'Write the templates': [`${SAFE}_templates.pdf`, '%PDF-'],
      'Write the SVGs': [`${SAFE}_as-drilled_sheets-svg.zip`, 'PK'],
      'Write the job by hand': [`${SAFE}_job-by-hand.pdf`, '%PDF-'],
      'Write CSV': [`${SAFE}_dimensions.csv`, ''],
      'Write JSON': [`${SAFE}_dimensions.json`, '{'],
      'Save the design': [`${SAFE}.pinbridge.json`, '{'],
    } as const;
    for (const [act, [name, begins]] of Object.entries(files)) {
      const file = await saved(page, button(page, act));
      expect(file.name, act).toBe(name);
      expect(file.bytes.length, act).toBeGreaterThan(900);
      expect(file.bytes.toString('latin1').startsWith(begins), `${act} begins with ${begins}`).toBe(true);
    }
  });

  test('an order that can’t be is said at its field', async ({ page }) => {
    await dialog(page).locator('#order-quantity').fill('0');
    await expect
      .poll(() => dialog(page).locator('#order-quantity-problem').textContent())
      .toContain('1 to 999');
    await dialog(page).locator('#order-sandingAllowance').fill('2');
    await expect
      .poll(() => dialog(page).locator('#order-sandingAllowance-problem').textContent())
      .toContain('0, or 0.01 to 0.5 mm');
    expect(await button(page, 'Write the order packet').isDisabled()).toBe(true);
    await page.screenshot({ path: path.join(pictures, 'files-refused.png') });
  });

  test('the packet is one ZIP, whole by other hands’ unzip and hashes, and says what was ordered', async ({
    page,
  }) => {
    await dialog(page).locator('#order-quantity').fill('3');
    await dialog(page).locator('#order-sandingAllowance').fill('0.2');
    await dialog(page).locator('#order-deadline').fill('2031-05-17');
    await dialog(page).locator('#order-remarks').fill('Ring me: “Ω” 🪵\nLeave the slot to me.');
    await dialog(page).getByRole('radio', { name: 'as reamed' }).check();
    const zip = await saved(page, button(page, 'Write the order packet'));
    expect(zip.name).toBe(`${SAFE}_as-reamed_allowance-0.2_packet.zip`);
    const folder = await mkdtemp(path.join(tmpdir(), 'pinbridge-packet-'));
    try {
      const unzipped = spawnSync('unzip', ['-q', zip.path, '-d', folder], { encoding: 'utf8' });
      expect(unzipped.status, unzipped.stderr).toBe(0);
      const names = readdirSync(folder);
      for (const end of ['.step', '.stl', '.3mf', '.dxf', 'note.pdf', 'drawing.pdf', '.csv', 'design.json'])
        expect(
          names.filter((name) => name.endsWith(end)),
          end,
        ).toHaveLength(1);
      const manifest = names.find((name) => name.endsWith('_manifest.txt')) ?? '';
      const checked = spawnSync('sha256sum', ['-c', '--strict', manifest], { cwd: folder, encoding: 'utf8' });
      expect(checked.status, checked.stdout + checked.stderr).toBe(0);
      expect(checked.stdout.match(/: OK/g)).toHaveLength(names.length - 1);
      const note = names.find((name) => name.endsWith('note.pdf')) ?? '';
      if (hasPoppler) {
        const text = said('pdftotext', path.join(folder, note), '-');
        for (const words of ['3 pieces', '2031-05-17', 'Leave the slot to me']) expect(text).toContain(words);
        const drawing = names.find((name) => name.endsWith('drawing.pdf')) ?? '';
        expect(said('pdftotext', path.join(folder, drawing), '-')).toContain('Holes as reamed');
      }
      const design = names.find((name) => name.endsWith('design.json')) ?? '';
      expect(JSON.parse(readFileSync(path.join(folder, design), 'utf8')).guitar.name).toBe(NAME);
    } finally {
      await rm(folder, { recursive: true, force: true });
    }
    // what was ordered stays through closing
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Files for the shop' }).click();
    expect(await dialog(page).locator('#order-quantity').inputValue()).toBe('3');
    expect(await dialog(page).locator('#order-remarks').inputValue()).toContain('Leave the slot to me');
    await page.keyboard.press('Escape');
  });

  test('the name stands readable on screen, sheets and in the steps, and breaks nothing', async ({
    page,
  }) => {
    await page.getByRole('tab', { name: 'Sheets', exact: true }).click();
    await page.locator('.sheets[data-state="current"] .page-paper.front svg').waitFor({ timeout: 60_000 });
    expect(await page.locator('.page-paper.front text').allTextContents()).toContain(NAME);
    const pdf = await saved(page, page.getByRole('button', { name: 'Save all as PDF' }));
    expect(pdf.name).toBe(`${SAFE}_as-drilled_sheets.pdf`);
    expect(pdf.bytes.length).toBeGreaterThan(30_000);
    await page.getByRole('tab', { name: 'Making', exact: true }).click();
    expect(await page.locator('.step').count()).toBeGreaterThan(12);
  });

  test('a kernel that dies midway is told, nothing is written, and the next press writes', async ({
    browser,
    page,
  }) => {
    const fresh = await browser.newPage();
    try {
      // every worker of the page can be ended from outside, as by a machine short of memory
      await fresh.addInitScript(() => {
        const Plain = Worker;
        const all: Worker[] = [];
        Object.assign(window, {
          Worker: class extends Plain {
            constructor(...given: ConstructorParameters<typeof Worker>) {
              super(...given);
              all.push(this);
            }
          },
          breakWorkers: () => {
            for (const one of all.splice(0))
              one.dispatchEvent(new ErrorEvent('error', { message: 'out of memory' }));
          },
        });
      });
      await fresh.goto(page.url());
      await fresh.locator('.viewport[data-stamp="solid"]').waitFor({ timeout: 90_000 });
      await fresh.getByRole('button', { name: 'Files for the shop' }).click();
      await dialog(fresh).locator('#order-quantity').fill('4');
      await button(fresh, 'Write the order packet').click();
      await dialog(fresh).locator('progress').waitFor();
      await fresh.evaluate(() => (window as unknown as { breakWorkers: () => void }).breakWorkers());
      await expect
        .poll(() => dialog(fresh).locator('.file-outcome').textContent(), { timeout: 60_000 })
        .toContain('Nothing was written. Try again.');
      expect(await dialog(fresh).locator('#order-quantity').inputValue(), 'nothing typed is lost').toBe('4');
      const zip = await saved(fresh, button(fresh, 'Write the order packet'));
      expect(zip.bytes.length).toBeGreaterThan(50_000);
    } finally {
      await fresh.close();
    }
  });
});
