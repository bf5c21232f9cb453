import { readFile } from 'node:fs/promises';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { pictures, test } from './support/page.ts';

/** What the view says of the mesh it shows. */
async function shown(page: Page): Promise<{ stamp: string; volume: number; triangles: number }> {
  return page.locator('.viewport').evaluate((view) => ({
    stamp: view.getAttribute('data-stamp') ?? '',
    volume: Number(view.getAttribute('data-volume')),
    triangles: Number(view.getAttribute('data-triangles')),
  }));
}

/** Waits until the exact solid is shown, and gives its mesh's volume, mm³. */
async function solidVolume(page: Page): Promise<number> {
  await page.waitForSelector('.viewport[data-stamp="solid"]', { timeout: 90_000 });
  return (await shown(page)).volume;
}

/** Types a value into a field, as a person would, and gives the volumes of draft and solid that follow. */
async function change(page: Page, group: string, field: string, value: string) {
  const input = page.locator(`#field-${group}-${field}`);
  if (!(await input.isVisible())) await page.locator(`button[aria-controls="group-${group}"]`).click();
  const before = await solidVolume(page);
  await input.fill(value);
  await input.press('Enter');
  await page.waitForFunction(
    (old) => Math.abs(Number(document.querySelector('.viewport')?.getAttribute('data-volume')) - old) > 0.5,
    before,
    { timeout: 90_000 },
  );
  return { before, after: await solidVolume(page) };
}

const picture = (name: string) => path.join(pictures, `${name}.png`);

describe('the main job, by the page', () => {
  test('draws a draft, then the exact solid, and says which', async ({ page }) => {
    await page.waitForSelector('.viewport[data-stamp="draft"], .viewport[data-stamp="solid"]', {
      timeout: 90_000,
    });
    const volume = await solidVolume(page);
    // a plain bridge of this size in the middle of what is usual: 20–35 g at 849 kg/m³ (common practice)
    expect(volume * 849e-6).toBeGreaterThan(20);
    expect(volume * 849e-6).toBeLessThan(35);
    await expect.poll(() => page.locator('body').textContent()).toContain('exact solid');
    await page.screenshot({ path: picture('page') });
  });

  test('follows the wing tip, the crown, the slot angle and the pin taper', async ({ page }) => {
    const tip = await change(page, 'top', 'tip', '4');
    expect(tip.after, 'a thicker tip is more wood').toBeGreaterThan(tip.before + 100);
    await page.locator('#field-top-crown').selectOption('set');
    const crown = await change(page, 'top', 'crownRadius', '10 in');
    expect(crown.after, 'a rounder crown is less wood').toBeLessThan(crown.before - 100);
    await page.getByRole('button', { name: 'as reamed' }).or(page.getByLabel('as reamed')).first().click();
    await solidVolume(page);
    const taper = await change(page, 'pins', 'taper', '3');
    expect(Math.abs(taper.after - taper.before), 'another taper, another hole').toBeGreaterThan(1);
    const angle = await change(page, 'saddle', 'depth', '6');
    expect(angle.after, 'a deeper slot is less wood').toBeLessThan(angle.before - 50);
    const before = await page.screenshot();
    const turned = page.locator('#field-saddle-angle');
    await turned.fill('5');
    await turned.press('Enter');
    await page.waitForSelector('.viewport:not([data-stamp="solid"])', { timeout: 30_000 });
    await solidVolume(page);
    expect(before.equals(await page.screenshot()), 'the picture changes with the slot angle').toBe(false);
    await page.screenshot({ path: picture('changed') });
  });

  test('keeps the last good part and says what is wrong when a value cannot be', async ({ page }) => {
    const good = await solidVolume(page);
    const input = page.locator('#field-saddle-depth');
    await input.fill('15');
    await input.press('Enter');
    await page.waitForSelector('.viewport[data-stamp="stale"]', { timeout: 30_000 });
    expect((await shown(page)).volume).toBe(good);
    const text = await page.locator('body').textContent();
    expect(text, 'what is allowed').toMatch(/at most [\d.]+ mm/);
    expect(await input.inputValue(), 'what was typed is kept').toBe('15');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await solidVolume(page)).toBeCloseTo(good, 0);
  });

  test('cuts the part open across a pin and the slot', async ({ page }) => {
    await page.getByRole('button', { name: 'Section', exact: true }).click();
    await page.getByRole('button', { name: /^x/ }).click();
    await expect.poll(() => page.locator('.viewport').getAttribute('data-section')).toMatch(/^x /);
    const area = Number(await page.locator('.viewport').getAttribute('data-cut-area'));
    expect(area, 'area of the cut, mm²').toBeGreaterThan(100);
    await page.screenshot({ path: picture('section') });
    await page.getByRole('button', { name: 'Section', exact: true }).click();
  });

  test('saves STEP and STL', async ({ page }) => {
    await page.getByRole('button', { name: 'Files for the shop' }).click();
    for (const kind of ['STEP', 'STL'] as const) {
      const arriving = page.waitForEvent('download', { timeout: 90_000 });
      await page.getByRole('button', { name: `Write ${kind}` }).click();
      const file = await arriving;
      const bytes = await readFile(await file.path());
      expect(file.suggestedFilename()).toMatch(/as-drilled/);
      if (kind === 'STEP') expect(bytes.toString('latin1')).toMatch(/^ISO-10303-21;[\s\S]*AUTOMOTIVE_DESIGN/);
      else expect(bytes.length).toBe(84 + 50 * bytes.readUInt32LE(80));
    }
    await page.screenshot({ path: picture('files') });
    await page.keyboard.press('Escape');
  });

  test('keeps the design through a reload', async ({ page }) => {
    const volume = await solidVolume(page);
    await page.reload();
    await page.waitForSelector('.viewport[data-stamp="solid"]', { timeout: 90_000 });
    await page.getByRole('button', { name: 'as reamed' }).or(page.getByLabel('as reamed')).first().click();
    await expect.poll(async () => solidVolume(page), { timeout: 60_000 }).toBeCloseTo(volume, 0);
  });
});
