import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { inkInRows } from './support/inkInRows.ts';
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

/** Presses the mark of a number that is solved from the guitar; any other is typed as it stands. */
async function setByHand(page: Page, field: string) {
  const input = page.locator(`#field-${field.replace('.', '-')}`);
  if ((await input.getAttribute('readonly')) !== null)
    await page.locator(`[data-path="${field}"] .solved-mark`).click();
}

/** Types a value into a field, as a person would, and gives the volumes of draft and solid that follow. */
async function change(page: Page, group: string, field: string, value: string) {
  const input = page.locator(`#field-${group}-${field}`);
  if (!(await input.isVisible())) await page.locator(`button[aria-controls="group-${group}"]`).click();
  await setByHand(page, `${group}.${field}`);
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

/** Where the line around a cut crosses the rows of the view's picture, when that has come to rest. */
async function inkAtRest(page: Page) {
  const canvas = page.locator('.viewport-canvas');
  let rows = await inkInRows(canvas);
  for (let last = ''; JSON.stringify(rows) !== last; rows = await inkInRows(canvas))
    last = JSON.stringify(rows);
  return rows;
}

/**
 * The cut across the slot and a pin, read from its picture: the part is 36 mm deep at the middle, and its outline
 * crosses a row of pixels six times where the slot is cut, four times below its floor.
 */
async function cutAsDrawn(page: Page) {
  const rows = await inkAtRest(page);
  const upper = longestRun(rows, 6);
  const lower = longestRun(rows, 4);
  expect(upper.length, 'rows of pixels through the slot').toBeGreaterThan(40);
  expect(lower.length, 'rows of pixels below the slot').toBeGreaterThan(20);
  // below the bevel, and above the line of the glue face
  const [high, low] = [Math.round(0.3 * upper.length), Math.round(0.8 * lower.length)];
  const [front = 0, slotFront = 0, slotBack = 0, ...hole] = upper[high] ?? [];
  const [back = 0] = hole.slice(2);
  const below = lower[low] ?? [];
  const mm = 36 / (back - front);
  const width = ([, , , start = 0, end = 0]: readonly number[]) => end - start;
  const highWidth = width(upper[high] ?? []);
  const lowWidth = width([0, 0, ...below]);
  // the floor's own row lies between the two runs
  const narrowing = (highWidth - lowWidth) / (upper.length - high + 1 + low);
  return {
    slotMm: mm * (slotBack - slotFront),
    narrowing,
    holeAtGlueMm: mm * (lowWidth - narrowing * (lower.length - low)),
  };
}

/** The longest run of rows that are crossed this often. */
function longestRun(rows: readonly (readonly number[])[], crossings: number): readonly (readonly number[])[] {
  let longest: readonly (readonly number[])[] = [];
  let run: (readonly number[])[] = [];
  for (const row of rows) {
    if (row.length === crossings) run.push(row);
    else run = [];
    if (run.length > longest.length) longest = run;
  }
  return longest;
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
    const crown = await change(page, 'top', 'crownRadius', '14 in');
    expect(crown.after, 'a rounder crown is less wood').toBeLessThan(crown.before - 100);
    await page.getByRole('button', { name: 'as reamed' }).or(page.getByLabel('as reamed')).first().click();
    await solidVolume(page);
    const taper = await change(page, 'pins', 'taper', '3');
    expect(Math.abs(taper.after - taper.before), 'another taper, another hole').toBeGreaterThan(1);
    const angle = await change(page, 'saddle', 'depth', '6.5');
    expect(angle.after, 'a deeper slot is less wood').toBeLessThan(angle.before - 50);
    const before = await page.screenshot();
    const turned = page.locator('#field-saddle-angle');
    await setByHand(page, 'saddle.angle');
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
    expect(text, 'what is allowed').toMatch(/at most [\d.]+ mm/i);
    expect(await input.inputValue(), 'what was typed is kept').toBe('15');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await solidVolume(page)).toBeCloseTo(good, 0);
  });

  test('cuts the part open across a pin and the slot: the slot is as wide, the hole as tapered as the design says', async ({
    page,
  }) => {
    await change(page, 'pins', 'taper', '5');
    await page.emulateMedia({ reducedMotion: 'reduce' });
    const view = page.locator('.viewport');
    const above = page.getByRole('button', { name: 'from above' });
    await above.click();
    for (const name of ['Edges', 'Parallel', 'Section'])
      await page.getByRole('button', { name, exact: true }).click();
    await page.getByRole('button', { name: 'lengthwise' }).click();
    const lengthwise = (await inkAtRest(page)).flat();
    expect(Math.min(...lengthwise), 'the cut along the bridge is wholly in the view').toBeGreaterThan(20);
    await page.setViewportSize({ width: 1920, height: 1080 });
    await page.getByRole('button', { name: 'across' }).click();
    // of six pins, 57 mm from the first to the last, the fourth stands here
    await page.getByRole('textbox', { name: /^Place of the cut/ }).fill('5.7');
    await page.keyboard.press('Enter');
    await expect.poll(() => view.getAttribute('data-section')).toMatch(/^x 5.70 /);
    const area = Number(await view.getAttribute('data-cut-area'));
    expect(area, 'area of the cut, mm²').toBeGreaterThan(100);
    await page.getByRole('button', { name: 'Face the cut' }).click();

    const reamed = await cutAsDrawn(page);
    await page.screenshot({ path: picture('section') });
    // a slot turned by 5° is cut slantwise
    expect(reamed.slotMm, 'width of the slot in the cut').toBeCloseTo(3.2 / Math.cos((5 * Math.PI) / 180), 1);
    expect(reamed.narrowing, 'what a hole reamed at 5° loses in width by depth').toBeCloseTo(
      2 * Math.tan((2.5 * Math.PI) / 180),
      2,
    );
    await page.getByRole('tab', { name: 'Figures' }).click();
    const figure = page.locator('details', { hasText: 'Reamed, at the glue face' }).locator('.figure-value');
    expect(reamed.holeAtGlueMm, 'the hole at the glue face, as the figures say').toBeCloseTo(
      Number.parseFloat((await figure.textContent()) ?? ''),
      1,
    );

    await page.getByLabel('as drilled').click();
    await solidVolume(page);
    const drilled = await cutAsDrawn(page);
    expect(drilled.narrowing, 'a drilled hole is parallel').toBeCloseTo(0, 2);
    expect(drilled.holeAtGlueMm, 'a drill of 3/16 in').toBeCloseTo((25.4 * 3) / 16, 1);

    await page.getByLabel('as reamed').click();
    for (const name of ['Edges', 'Parallel', 'Section'])
      await page.getByRole('button', { name, exact: true }).click();
    await expect
      .poll(() => above.getAttribute('aria-pressed'), {
        message: 'the closed part is seen as it was before the cut',
      })
      .toBe('true');
    await page.emulateMedia({ reducedMotion: null });
    await page.setViewportSize({ width: 1280, height: 800 });
  });

  test('saves STEP and STL', async ({ page }) => {
    await page.getByRole('button', { name: 'Files for the shop' }).click();
    for (const kind of ['STEP', 'STL'] as const) {
      const arriving = page.waitForEvent('download', { timeout: 90_000 });
      await page.getByRole('button', { name: `Write ${kind}` }).click();
      const file = await arriving;
      const bytes = await readFile(await file.path());
      expect(file.suggestedFilename(), 'holes as they are seen').toMatch(/as-reamed/);
      if (kind === 'STEP') expect(bytes.toString('latin1')).toMatch(/^ISO-10303-21;[\s\S]*AUTOMOTIVE_DESIGN/);
      else expect(bytes.length).toBe(84 + 50 * bytes.readUInt32LE(80));
    }
    await page.screenshot({ path: picture('files') });
    await page.keyboard.press('Escape');
  });

  test('opens a saved design again, and undo brings back the one it replaced', async ({ page }) => {
    const length = page.locator('#field-footprint-length');
    if (!(await length.isVisible())) await page.locator('button[aria-controls="group-footprint"]').click();
    await length.focus();
    const seen = async () => ({
      length: await length.inputValue(),
      volume: await solidVolume(page),
      lines: await page
        .locator('.drawing-lines path')
        .evaluateAll((all) => all.map((p) => p.getAttribute('d'))),
      labels: await page.locator('.drawing-label').allTextContents(),
    });
    const saved = await seen();
    expect(saved.labels).toContain('153');
    const arriving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save' }).click();
    const download = await arriving;
    expect(download.suggestedFilename()).toMatch(/\.pinbridge\.json$/);
    const file = path.join(await mkdtemp(path.join(tmpdir(), 'pinbridge-')), download.suggestedFilename());
    await download.saveAs(file);
    await expect.poll(() => page.locator('.saved').textContent()).toBe('saved');

    await change(page, 'footprint', 'length', '170');
    const changed = await seen();
    expect(changed.volume, 'a longer bridge is more wood').toBeGreaterThan(saved.volume + 100);
    expect(changed.labels).toContain('170');
    expect(changed.lines).not.toEqual(saved.lines);
    expect(await page.locator('.saved').textContent()).toBe('changed since saved');

    const choosing = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Open' }).click();
    await (await choosing).setFiles(file);
    await expect.poll(() => length.inputValue()).toBe(saved.length);
    await expect.poll(seen, { timeout: 90_000 }).toEqual(saved);
    expect(await page.locator('.saved').textContent()).toBe('saved');

    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => length.inputValue()).toBe('170');
    await expect.poll(seen, { timeout: 90_000 }).toEqual(changed);
    await rm(path.dirname(file), { recursive: true });
  });

  test('keeps the design through a reload', async ({ page }) => {
    const volume = await solidVolume(page);
    const saved = await page.locator('.saved').textContent();
    await page.reload();
    await page.waitForSelector('.viewport[data-stamp="solid"]', { timeout: 90_000 });
    expect(await page.locator('.saved').textContent(), 'whether it is in a file').toBe(saved);
    await page.getByRole('button', { name: 'as reamed' }).or(page.getByLabel('as reamed')).first().click();
    await expect.poll(async () => solidVolume(page), { timeout: 60_000 }).toBeCloseTo(volume, 0);
  });
});
