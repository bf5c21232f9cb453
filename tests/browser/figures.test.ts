import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { pictures, test } from './support/page.ts';

/** Figures give way to what is typed: on a machine that does other work they may take seconds. */
const eventually = <T>(read: () => T) => expect.poll(read, { timeout: 15_000 });

/** Types a value into a field, as a person would. */
async function type(page: Page, group: string, field: string, value: string) {
  const input = page.locator(`#field-${group}-${field}`);
  if (!(await input.isVisible())) await page.locator(`button[aria-controls="group-${group}"]`).click();
  await input.fill(value);
  await input.press('Enter');
}

const turnTo = (page: Page, tab: string) => page.getByRole('tab', { name: tab }).click();
const figure = (page: Page, label: string) => page.locator('.figures details', { hasText: label }).first();

async function numberOf(page: Page, label: string): Promise<number> {
  return Number.parseFloat((await figure(page, label).locator('.figure-value').textContent()) ?? '');
}

const curve = (page: Page) =>
  page.locator('[data-picture="stiffness"] [data-mark="stiffness"]').getAttribute('d');
const MIDDLE = 'Stiffness in the middle';

describe('figures, by the page', () => {
  test('the plot of stiffness follows a typed thickness, and a slide', async ({ page }) => {
    await turnTo(page, 'Figures');
    await page.locator('[data-picture="stiffness"]').waitFor();
    const thickness = page.locator('#field-top-thickness');
    if (!(await thickness.isVisible())) await page.locator('button[aria-controls="group-top"]').click();
    // solved at first: the mark sets it by hand
    await page.locator('.solved-mark', { hasText: 'solved' }).first().click();
    const before = { curve: await curve(page), middle: await numberOf(page, MIDDLE) };
    await type(page, 'top', 'thickness', '10.4');
    await eventually(() => curve(page)).not.toBe(before.curve);
    const thicker = { curve: await curve(page), middle: await numberOf(page, MIDDLE) };
    expect(thicker.middle, 'thicker is stiffer').toBeGreaterThan(before.middle * 1.2);
    expect(
      await page.locator('[data-picture="stiffness"] [data-mark="reference"]').getAttribute('d'),
      'the reference stays where it was, at another scale',
    ).not.toBeNull();

    await thickness.focus();
    const slide = page.locator('.bench-note input[type="range"]');
    await slide.focus();
    await page.keyboard.press('ArrowRight');
    await eventually(() => curve(page)).not.toBe(thicker.curve);
    expect(await numberOf(page, MIDDLE)).toBeGreaterThan(thicker.middle);
    await page.screenshot({ path: path.join(pictures, 'figures.png') });
  });

  test('a figure opens to formula and source, and stands beside its share of the reference', async ({
    page,
  }) => {
    const stiffness = figure(page, MIDDLE);
    expect(await stiffness.locator('.figure-share').textContent()).toMatch(
      /^\d+ % of usual bridge, invented$/,
    );
    await stiffness.locator('summary').click();
    await eventually(() => stiffness.textContent()).toContain('Bending stiffness: E·I');
    expect(await stiffness.locator('.source').textContent()).toContain('Derived here: the standard beam');
    await stiffness.getByRole('button', { name: 'Show its number' }).click();
    await eventually(() => page.evaluate(() => document.activeElement?.id)).toBe('field-top-thickness');
  });

  test('what a tenth does leads to its field, and the caution stands once with the loads', async ({
    page,
  }) => {
    await page.locator('.tenths button', { hasText: 'Footprint, depth, wings' }).click();
    await eventually(() => page.evaluate(() => document.activeElement?.id)).toBe('field-footprint-depthWing');
    const cautions = page.locator('.figures .caution');
    expect(await cautions.count()).toBe(1);
    expect(await cautions.textContent()).toContain('They guarantee nothing');
    expect(await page.locator('.figures [data-column="onSaddle"]').count()).toBe(6);
  });

  test('an aim makes the wing tip follow, from a typed mass as from a slide', async ({ page }) => {
    const aimOf = page.locator('#field-aim-of');
    if (!(await aimOf.isVisible())) await page.locator('button[aria-controls="group-aim"]').click();
    await aimOf.selectOption('mass');
    const tip = page.locator('#field-top-tip');
    if (!(await tip.isVisible())) await page.locator('button[aria-controls="group-top"]').click();
    const aim = (what: string) => page.locator(`.aimed [data-aim="${what}"]`).textContent();
    const aimFor = async (grams: number) => {
      await type(page, 'aim', 'mass', String(grams));
      await eventually(() => aim('asked')).toBe(`${grams.toFixed(2)} g`);
      return {
        reached: Number.parseFloat((await aim('reached')) ?? ''),
        tip: Number(await tip.inputValue()),
      };
    };
    const light = await aimFor(30);
    expect(light.reached).toBeCloseTo(30, 1);
    expect(await tip.getAttribute('readonly'), 'it follows').not.toBeNull();
    const heavy = await aimFor(31);
    expect(heavy.reached).toBeCloseTo(31, 1);
    expect(heavy.tip, 'a gram more in the wings').toBeGreaterThan(light.tip + 0.3);
    expect(await numberOf(page, 'Mass, as reamed')).toBeCloseTo(31, 1);
    expect(await aim('follows')).toBe(`${heavy.tip.toFixed(2)} mm`);

    await page.locator('#field-aim-mass').focus();
    await page.locator('.bench-note input[type="range"]').focus();
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
    await eventually(() => aim('asked')).toBe('31.50 g');
    expect(Number.parseFloat((await aim('reached')) ?? '')).toBeCloseTo(31.5, 1);
    expect(Number(await tip.inputValue())).toBeGreaterThan(heavy.tip);
    await page.screenshot({ path: path.join(pictures, 'aim.png') });
    await page.locator('.aimed button', { hasText: 'wing tip' }).click();
    await eventually(() => page.evaluate(() => document.activeElement?.id)).toBe('field-top-tip');
    await aimOf.selectOption('none');
    await eventually(() => page.locator('.aimed').count()).toBe(0);
  });
});

describe('two designs side by side, by the page', () => {
  const heading = (page: Page) => page.locator('#compare-title').textContent();

  test('a starter is compared with: outlines, dimensions, figures and curves', async ({ page }) => {
    await turnTo(page, 'Compare');
    await eventually(() => heading(page)).toBe('Against usual bridge, invented');
    await page.getByRole('button', { name: 'Choose another reference' }).click();
    await page.locator('dialog .starters button', { hasText: 'Gannet' }).click();
    await eventually(() => heading(page)).toBe('Against Gannet');
    const outlines = await Promise.all(
      ['reference outline', 'bench outline'].map((mark) =>
        page.locator(`[data-picture="overlay-plan"] [data-mark="${mark}"]`).getAttribute('d'),
      ),
    );
    expect(outlines[0]).not.toBe(outlines[1]);
    const scale = page.locator('.differences tr[data-path="guitar.scale"]');
    const [reference, here, by] = (await scale.locator('td').allTextContents()).map((said) =>
      Number(said.replace('−', '-')),
    ) as [number, number, number];
    expect(here - reference).toBeCloseTo(by, 2);
    expect(by, 'the starter has a longer scale').toBeLessThan(-1);
    const [a, b, share] = await page.locator('tr[data-figure="mid-stiffness"] td').allTextContents();
    expect(Number.parseFloat(share ?? '') / 100).toBeCloseTo(Number(b) / Number(a), 2);
    expect(await page.locator('.compare .caution').count(), 'load figures with their caution').toBe(1);
    await page.locator('tr[data-figure="couple"] button').click();
    await eventually(() => page.locator('.compare .opened').textContent()).toContain('M = Σ T·h');
    await page.screenshot({ path: path.join(pictures, 'compare.png') });
    await scale.locator('button').click();
    await eventually(() => page.evaluate(() => document.activeElement?.id)).toBe('field-guitar-scale');
  });

  test('the reference outlives a reload; taken anew, nothing differs until something is changed', async ({
    page,
  }) => {
    await page.reload();
    await turnTo(page, 'Compare');
    await eventually(() => heading(page)).toBe('Against Gannet');
    await page.getByRole('button', { name: 'Take this design as the reference' }).click();
    await eventually(() => page.locator('.differences').count()).toBe(0);
    await type(page, 'top', 'thickness', '9.9');
    await eventually(() => page.locator('.differences tr[data-path="top.thickness"]').count()).toBe(1);
    expect(await page.locator('tr[data-figure="mid-stiffness"] td').last().textContent()).toMatch(
      /^[78]\d %$/,
    );
  });

  test('in a narrow window nothing runs out of the column', async ({ page }) => {
    await page.setViewportSize({ width: 1100, height: 720 });
    for (const tab of ['Compare', 'Figures']) {
      await turnTo(page, tab);
      await page.locator('[data-picture="stiffness"]').waitFor();
      const column = page.locator('#right-panel');
      expect(await column.evaluate((panel) => panel.scrollWidth - panel.clientWidth), tab).toBe(0);
    }
    await page.setViewportSize({ width: 1280, height: 800 });
  });
});
