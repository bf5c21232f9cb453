import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { pictures, test } from './support/page.ts';

const picture = (name: string) => path.join(pictures, `${name}.png`);
const finding = (page: Page, id: string) => page.locator(`[data-finding="${id}"]`);
const attribute = (page: Page, name: string) => page.locator('.viewport').getAttribute(name);

/** Types a number of the form, its group opened first. */
async function type(page: Page, group: string, field: string, value: string) {
  const head = page.locator(`button[aria-controls="group-${group}"]`);
  if ((await head.getAttribute('aria-expanded')) === 'false') await head.click();
  const input = page.locator(`#field-${group}-${field}`);
  await input.fill(value);
  await input.press('Tab');
}

describe('findings', () => {
  test('one that is chosen lights its place, and its remedy rebuilds the part and can be undone', async ({
    page,
  }) => {
    await page.waitForSelector('.viewport[data-stamp="solid"]', { timeout: 90_000 });
    await page.getByRole('tab', { name: /^Findings/ }).click();
    await type(page, 'top', 'tip', '2');
    const card = finding(page, 'wing-tip');
    await card.waitFor();
    expect(await attribute(page, 'data-found'), 'nothing is lit before').toBe('0');

    await card.getByRole('button').first().click();
    await expect.poll(() => attribute(page, 'data-found').then(Number)).toBeGreaterThan(0);
    expect(await card.textContent()).toMatch(/Common practice/);
    await page.waitForSelector('.viewport[data-stamp="solid"]', { timeout: 90_000 });
    await page.screenshot({ path: picture('finding') });
    const volume = Number(await attribute(page, 'data-volume'));

    await card.getByRole('button', { name: /^Make the wing tip 2\.5/ }).click();
    await card.waitFor({ state: 'detached' });
    expect(await page.locator('#field-top-tip').inputValue()).toBe('2.5');
    await page.waitForSelector('.viewport[data-stamp="solid"]', { timeout: 90_000 });
    expect(Number(await attribute(page, 'data-volume')), 'a thicker tip is more wood').toBeGreaterThan(
      volume,
    );
    expect(await attribute(page, 'data-found')).toBe('0');

    await page.getByRole('button', { name: 'Undo' }).click();
    await card.waitFor();
    expect(await page.locator('#field-top-tip').inputValue()).toBe('2');
  });

  test('nothing that is only said to listeners makes the page longer than the window', async ({ page }) => {
    for (const tab of ['Fit', 'Findings', 'Figures', 'Compare']) {
      await page.getByRole('tab', { name: new RegExp(`^${tab}`) }).click();
      await page.waitForTimeout(300);
      const beyond = await page.evaluate(() => document.documentElement.scrollHeight - window.innerHeight);
      expect(beyond, `${tab}: a page that scrolls can scroll away`).toBe(0);
    }
    await page.getByRole('tab', { name: /^Findings/ }).click();
  });

  test('a limit that is changed is kept with the design, and the finding goes', async ({ page }) => {
    const card = finding(page, 'wing-tip');
    await card.waitFor();
    await card.getByRole('button', { name: 'Change the limit' }).click();
    const limit = page.locator('#field-limits-tipLeast');
    expect(await limit.evaluate((it) => it === document.activeElement), 'the caret is in it').toBe(true);
    await limit.fill('1.8');
    await card.waitFor({ state: 'detached' });
    await page.reload();
    await page.waitForSelector('.viewport[data-stamp="solid"]', { timeout: 90_000 });
    await page.getByRole('tab', { name: /^Findings/ }).click();
    await page.locator('[data-findings]').waitFor();
    expect(await finding(page, 'wing-tip').count()).toBe(0);
  });
});
