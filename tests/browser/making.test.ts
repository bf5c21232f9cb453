import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { pictures, test } from './support/page.ts';
import { saved } from './support/saved.ts';

const turnTo = (page: Page, tab: string) => page.getByRole('tab', { name: tab, exact: true }).click();
const setting = (page: Page, id: string) => page.locator(`[data-setting="${id}"]`);
const verdict = (page: Page, id: string) => setting(page, id).locator('.verdict').textContent();
const tick = (page: Page, step: string) => page.locator(`[data-step="${step}"] input[type="checkbox"]`);
const wanted = async (page: Page, id: string) =>
  Number.parseFloat((await setting(page, id).locator('.wanted').textContent()) ?? '');

/** What is typed must be kept by design, and a design is saved when it has rested. */
async function reload(page: Page) {
  await page.reload();
  await turnTo(page, 'Making');
  await page.locator('.step').first().waitFor();
}

describe('making, by the page', () => {
  test('lists the steps with their numbers, and each number opens to where it comes from', async ({
    page,
  }) => {
    await turnTo(page, 'Making');
    expect(await page.locator('.step').count()).toBeGreaterThan(12);
    await setting(page, 'slot.depth').locator('summary').click();
    await expect
      .poll(() => setting(page, 'slot.depth').locator('details').textContent())
      .toContain('derived here');
    expect(await page.locator('[data-step="blank"] .take-care').textContent()).toContain('NIOSH');
    expect(await page.locator('[data-step="slot"] .take-care').textContent()).toContain('machines');
  });

  test('a measured value is judged at once, and what it means is said below', async ({ page }) => {
    const depth = await wanted(page, 'slot.depth');
    const input = setting(page, 'slot.depth').locator('input');
    await input.fill((depth + 0.05).toFixed(2));
    await expect.poll(() => verdict(page, 'slot.depth')).toContain('within tolerance');
    await input.fill((depth + 0.3).toFixed(2));
    await expect
      .poll(() => verdict(page, 'slot.depth'))
      .toMatch(/0\.30 mm more than wanted: outside by 0\.20 mm/);
    expect(await page.locator('.job-state').textContent()).toContain('1 outside tolerance');
    const meaning = page.locator('.meaning');
    // a slot 0.30 mm deeper lowers the strings at the 12th fret by half of that (derived)
    await expect.poll(() => meaning.textContent()).toContain('Action at the 12th fret');
    expect(await meaning.textContent()).toContain('Wood under the slot');
    await input.fill('deep');
    await expect.poll(() => verdict(page, 'slot.depth')).toContain('a length such as');
    expect(await input.getAttribute('aria-invalid')).toBe('true');
    await input.fill((depth + 0.3).toFixed(2));
  });

  test('ticks, measured values and the workshop survive a reload', async ({ page }) => {
    await tick(page, 'blank').check();
    await tick(page, 'thickness').check();
    await page.locator('.workshop summary').click();
    await page.locator('#workshop-baseWidth').fill('110');
    await expect.poll(() => wanted(page, 'slot.fence')).toBeGreaterThan(54);
    const typed = await setting(page, 'slot.depth').locator('input').inputValue();
    await reload(page);
    expect(await page.locator('.job-state').textContent()).toContain('2 of');
    expect(await tick(page, 'thickness').isChecked()).toBe(true);
    expect(await tick(page, 'outline').isChecked()).toBe(false);
    expect(await setting(page, 'slot.depth').locator('input').inputValue()).toBe(typed);
    expect(await verdict(page, 'slot.depth')).toContain('outside by 0.20 mm');
    await page.locator('.workshop summary').click();
    expect(await page.locator('#workshop-baseWidth').inputValue()).toBe('110');
    await page.screenshot({ path: path.join(pictures, 'making.png') });
  });

  test('what the workshop can’t be is said at its field, and the steps stay', async ({ page }) => {
    const cutter = page.locator('#workshop-cutter');
    await cutter.fill('5');
    await expect.poll(() => page.locator('#workshop-cutter-problem').textContent()).toContain('At most');
    expect(await page.locator('.step').count()).toBeGreaterThan(12);
    expect(await page.getByRole('button', { name: 'Job by hand as PDF' }).isDisabled()).toBe(true);
    await cutter.fill('3/32 in');
    await expect.poll(() => page.locator('#workshop-cutter-problem').textContent()).toBe('');
    expect(await cutter.isVisible(), 'stays open under the caret').toBe(true);
  });

  test('belong to the design they were measured for: another begins anew, and may take them over', async ({
    page,
  }) => {
    const thickness = page.locator('#field-top-tip');
    if (!(await thickness.isVisible())) await page.locator('button[aria-controls="group-top"]').click();
    await thickness.fill('3.4');
    await expect.poll(() => page.locator('.job-state').textContent()).toContain('0 of');
    expect(await page.locator('#workshop-baseWidth').inputValue(), 'the workshop is the same').toBe('110');
    await page.getByRole('button', { name: 'Take them over' }).click();
    await expect.poll(() => page.locator('.job-state').textContent()).toContain('2 of');
    expect(await page.locator('.take-over').count()).toBe(0);
    await thickness.fill('3');
    await expect.poll(() => tick(page, 'blank').isChecked()).toBe(true);
    await page.getByRole('button', { name: 'Begin anew' }).click();
    await page.getByRole('button', { name: 'Clear all ticks and values' }).click();
    await expect.poll(() => page.locator('.job-state').textContent()).toContain('0 of');
  });

  test('a step leads to its template, and the job by hand is saved', async ({ page }) => {
    await page
      .locator('[data-step="drilling"]')
      .getByRole('button', { name: 'Template: drilling and slot' })
      .click();
    await page.locator('.page-paper.front[data-sheet="drilling"] svg').waitFor({ timeout: 60_000 });
    await turnTo(page, 'Making');
    const { name, bytes } = await saved(page, page.getByRole('button', { name: 'Job by hand as PDF' }));
    expect(name).toBe('Untitled-bridge_job-by-hand.pdf');
    expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
    expect(bytes.length).toBeGreaterThan(10_000);
  });
});
