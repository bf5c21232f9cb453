import { rename, rm, writeFile } from 'node:fs/promises';
import { diskTrouble } from './diskTrouble.ts';
import { FileError } from './exit.ts';

/**
 * Writes a file wholly or not at all: beside its place first, so that nobody mills a part from half a file.
 * Throws `FileError`.
 */
export async function writeWhole(file: string, bytes: Uint8Array): Promise<void> {
  const unfinished = `${file}.${process.pid}.part`;
  try {
    await writeFile(unfinished, bytes);
    await rename(unfinished, file);
  } catch (error) {
    await rm(unfinished, { force: true }).catch(() => {});
    throw new FileError(`${file} can't be written: ${diskTrouble(error)}`);
  }
}
