import path from 'node:path';
import { chromium as playwright } from 'playwright-core';
import { test as base, inject } from 'vitest';
import { chromium } from './chromium.ts';

/** Where screenshots go: look at them, since a page without text or without a picture passes many tests. */
export const pictures = path.resolve('tests/output');

/**
 * Vitest's own test with the app in a browser:
 * - `page`, 1280 × 800, opened once for a file: its tests share it, each going on from where the last one ended
 *   (a fresh one, with nothing stored and the kernel to be loaded anew: `browser.newPage()`);
 * - `complaints`, what the page has complained of since the test began: errors in its console, and those that
 *   nobody caught. A test that leaves any fails; one that provokes some on purpose takes them out of the list.
 * A failing test leaves a picture of its page.
 */
export const test = base
  .extend('launch', { scope: 'worker' }, () => chromium())
  .extend('browser', { scope: 'worker' }, async ({ launch }, { onCleanup }) => {
    const browser = await playwright.launch(launch);
    onCleanup(() => browser.close());
    return browser;
  })
  .extend('watched', { scope: 'file' }, async ({ browser }, { onCleanup }) => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    onCleanup(() => page.close());
    const complaints: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error')
        complaints.push(`console: ${message.text()} (${message.location().url})`);
    });
    page.on('pageerror', (error) => complaints.push(`not caught: ${error.stack ?? error.message}`));
    // No test can press the buttons of the system's own file dialogs: as in other browsers, files are downloaded and chosen.
    await page.addInitScript(() => {
      Reflect.deleteProperty(window, 'showSaveFilePicker');
      Reflect.deleteProperty(window, 'showOpenFilePicker');
    });
    await page.goto(inject('appUrl'));
    return { page, complaints };
  })
  .extend('page', { scope: 'file' }, ({ watched }) => watched.page)
  .extend('complaints', { auto: true }, ({ watched, page, task, onTestFailed }, { onCleanup }) => {
    const { complaints } = watched;
    onTestFailed(async () => {
      const file = path.join(pictures, `failed ${task.name.replaceAll(/[^\w-]+/g, ' ').trim()}.png`);
      await page.screenshot({ path: file });
    });
    onCleanup(() => {
      const heard = complaints.splice(0);
      if (heard.length > 0) throw new Error(`The page complained:\n${heard.join('\n')}`);
    });
    return complaints;
  });
