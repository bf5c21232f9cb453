import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';

/** Presses a button that saves a file, and gives what the browser was handed. */
export async function saved(
  page: Page,
  button: Locator,
): Promise<{ readonly name: string; readonly path: string; readonly bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download', { timeout: 110_000 }), button.click()]);
  const path = await download.path();
  return { name: download.suggestedFilename(), path, bytes: await readFile(path) };
}
