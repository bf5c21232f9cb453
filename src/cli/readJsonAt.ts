import { readFile } from 'node:fs/promises';
import { whereJsonBreaks } from '../files/whereJsonBreaks.ts';
import { FileError } from './exit.ts';

/** The JSON of a file that an option names. Throws `FileError`, saying which, and where it breaks. */
export async function readJsonAt(option: string, file: string): Promise<unknown> {
  let characters: string;
  try {
    // some editors put a byte order mark before UTF-8
    characters = (await readFile(file, 'utf8')).replace(/^\uFEFF/, '');
  } catch (error) {
    const missing = error instanceof Error && 'code' in error && error.code === 'ENOENT';
    const why = missing ? 'there is no such file' : error instanceof Error ? error.message : String(error);
    throw new FileError(`${option} ${file}: it can't be read: ${why}`);
  }
  try {
    return JSON.parse(characters);
  } catch {
    const place = whereJsonBreaks(characters);
    const where = place ? ` at line ${place.line}, column ${place.column}` : '';
    throw new FileError(`${option} ${file}: it stops being JSON${where}.`);
  }
}
