import { readFile } from 'node:fs/promises';
import { type AcceptedDesign, acceptDesign } from '../design/acceptDesign.ts';
import { parseDesignFile } from '../files/designFile.ts';
import { FileError } from './exit.ts';
import type { Io } from './io.ts';

/**
 * Reads a design from a file, or from stdin when the place is `-`, and draws it. Throws `FileError` when it can't be
 * read and `DesignError` when it can't be made.
 */
export async function readDesignAt(place: string, io: Io): Promise<AcceptedDesign> {
  return acceptDesign(parseDesignFile(await characters(place, io)));
}

async function characters(place: string, io: Io): Promise<string> {
  try {
    return place === '-' ? await io.readStdin() : await readFile(place, 'utf8');
  } catch (error) {
    throw new FileError(`it can't be read: ${why(error)}`);
  }
}

function why(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return 'code' in error && error.code === 'ENOENT' ? 'there is no such file' : error.message;
}
