import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { pictures, test } from './support/page.ts';

const picture = (page: Page, name: string) => page.locator(`[data-picture="${name}"]`);

/** Types a value into a field, as a person would. */
async function type(page: Page, group: string, field: string, value: string) {
  const input = page.locator(`#field-${group}-${field}`);
  if (!(await input.isVisible())) await page.locator(`button[aria-controls="group-${group}"]`).click();
  await input.fill(value);
  await input.press('Enter');
}

/** What the pictures and figures say of the last string, read from the page. */
async function seen(page: Page) {
  const number = async (name: string, mark: string, attribute: string) =>
    Number(await picture(page, name).locator(`[data-mark="${mark}"]`).getAttribute(attribute));
  const line = (name: string, mark: string) =>
    picture(page, name).locator(`[data-mark="${mark}"]`).getAttribute('d');
  const zero = Number(/^M[\d.-]+ ([\d.-]+)/.exec((await line('setbacks', 'scaleLine')) ?? '')?.[1]);
  const heading = (await page.locator('.fit h3', { hasText: 'Set-backs' }).textContent()) ?? '';
  const times = Number(/×(\d+)/.exec(heading)?.[1]);
  return {
    /** px behind the scale line as they would be in the plan: what is drawn, by how much larger it says it is. */
    asked: ((await number('setbacks', 'wanted 6', 'cy')) - zero) / times,
    askedText: Number(await picture(page, 'setbacks').locator('[data-mark="asked 6"]').textContent()),
    slot: await line('plan', 'slotLine'),
    plot: await line('intonation', 'bare 1'),
    string: await line('elevation', 'string'),
    breakAngle: Number.parseFloat(
      (await picture(page, 'elevation').locator('[data-mark="breakAngle"]').textContent()) ?? '',
    ),
    angle: Number.parseFloat(
      (await page
        .locator('.fit details', { hasText: 'Slot angle' })
        .locator('.figure-value')
        .textContent()) ?? '',
    ),
  };
}

describe('the fit, by the page', () => {
  test('plan, plot and elevation follow the action at once', async ({ page }) => {
    await picture(page, 'plan').waitFor();
    const before = await seen(page);
    expect(before.angle, 'common practice: 2.5 to 3.5°').toBeGreaterThan(2.5);
    expect(before.angle).toBeLessThan(3.5);
    await type(page, 'action', 'bass', '3.4');
    await expect.poll(async () => (await seen(page)).plot === before.plot).toBe(true);
    await expect.poll(async () => (await seen(page)).askedText).toBeGreaterThan(before.askedText);
    const bass = await seen(page);
    expect(bass.asked / bass.askedText, 'drawn to the scale that is written').toBeCloseTo(
      before.asked / before.askedText,
      1,
    );
    expect(bass.slot, 'the slot turns').not.toBe(before.slot);
    expect(bass.angle, 'more action at the bass, more angle').toBeGreaterThan(before.angle);
    await type(page, 'action', 'treble', '2.9');
    await expect
      .poll(async () => (await seen(page)).plot, { message: 'the first string’s cents' })
      .not.toBe(before.plot);
    expect((await seen(page)).string, 'it stands higher over its saddle').not.toBe(before.string);
    await page.screenshot({ path: path.join(pictures, 'fit.png') });
    for (let i = 0; i < 2; i++) await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => seen(page)).toEqual(before);
  });

  test('another string is chosen with the arrow keys, all of them with the space bar', async ({ page }) => {
    await page.getByRole('radio', { name: 'String 1, E4' }).focus();
    await page.keyboard.press('ArrowRight');
    await picture(page, 'intonation').locator('[data-mark="bare 2"]').waitFor();
    expect(await picture(page, 'intonation').locator('[data-mark^="bare "]').count()).toBe(1);
    expect(await picture(page, 'elevation').getAttribute('aria-label')).toContain('string 2, B3');
    await page.getByLabel('draw all strings').focus();
    await page.keyboard.press('Space');
    await expect.poll(() => picture(page, 'intonation').locator('[data-mark^="bare "]').count()).toBe(6);
    await page.getByLabel('draw all strings').uncheck();
    await page.getByRole('radio', { name: 'String 1, E4' }).check();
  });

  test('a column’s head opens to formula, inputs and source, and the press leads to its field', async ({
    page,
  }) => {
    await page.getByRole('button', { name: /^Tension, N/ }).click();
    const opened = page.locator('.fit-opened');
    await expect.poll(() => opened.textContent()).toContain('T = μ·(2·L·f)²');
    const said = (await opened.textContent()) ?? '';
    expect(said, 'its inputs').toMatch(/L 645\.00 mm, f 329\.63 Hz/);
    expect(said, 'what was read is a source').toContain('Source, read: Anderson & Beausoleil');
    expect(said, 'what was remembered is none').toContain('From memory, not looked up: ρ 7850');
    await opened.getByRole('button', { name: 'Show its number' }).click();
    await expect
      .poll(() => page.locator('button[aria-controls="group-strings"]').getAttribute('aria-expanded'))
      .toBe('true');
  });

  test('the residual cents stand with what they are worth', async ({ page }) => {
    const said = (await page.locator('.fit-honesty').textContent()) ?? '';
    for (const words of [
      '32 listeners',
      'p = .596 and .286',
      'fitted to common practice',
      'about 1.1 on nylon',
      '1.2°',
    ])
      expect(said).toContain(words);
    expect(await page.locator('.fit-care').textContent()).toContain('eye protection');
  });

  test('a remark leads to its field', async ({ page }) => {
    await page.locator('.fit-remarks button', { hasText: 'off the slot’s middle' }).click();
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('field-saddle-slotWidth');
  });

  test('a solved dimension stands in brackets and selects its field', async ({ page }) => {
    const label = page.locator('.drawing-label[data-path="top.thickness"]');
    expect(await label.textContent()).toMatch(/^\(\d+\.\d+\)$/);
    await label.click();
    await expect.poll(() => label.getAttribute('class')).toContain('selected');
    expect(await page.locator('.drawing-input').count(), 'it can’t be typed over').toBe(0);
  });

  test('in a narrow window the fit lies under a tab of its own', async ({ page }) => {
    await page.setViewportSize({ width: 1024, height: 768 });
    await page.getByRole('tab', { name: 'Bench' }).focus();
    await page.keyboard.press('ArrowRight');
    await picture(page, 'plan').waitFor();
    expect(await page.locator('#side-panel').evaluate((panel) => panel.scrollWidth - panel.clientWidth)).toBe(
      0,
    );
    await page.getByRole('tab', { name: 'Bench' }).click();
    await expect.poll(() => picture(page, 'plan').count()).toBe(0);
    await page.setViewportSize({ width: 1280, height: 800 });
  });
});
