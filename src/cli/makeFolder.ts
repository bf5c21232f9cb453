import { mkdir, stat } from 'node:fs/promises';
import path from 'node:path';
import { diskTrouble } from './diskTrouble.ts';
import { FileError } from './exit.ts';

/**
 * Makes a folder and those above it that are missing. One after another, since Node's own `recursive` never returns
 * where the system says that a folder isn't there whose parent is (under /proc, on some network disks).
 * Throws `FileError`.
 */
export async function makeFolder(folder: string): Promise<void> {
  try {
    await makeChain(path.resolve(folder));
  } catch (error) {
    throw new FileError(`${folder} can't be made: ${diskTrouble(error)}`);
  }
}

async function makeChain(folder: string): Promise<void> {
  const found = await stat(folder).catch(() => undefined);
  if (found?.isDirectory()) return;
  const above = path.dirname(folder);
  if (above !== folder) await makeChain(above);
  await mkdir(folder);
}
