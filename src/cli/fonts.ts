import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { createTypeface, type FontTypeface } from '../sheets/typeface.ts';
import { FileError } from './exit.ts';

/** The fonts of the papers, where npm put their package: beside the sources as beside what is built of them. */
const FONTS = ['DejaVuSans', 'DejaVuSans-Bold'].map((name) => `dejavu-fonts-ttf/ttf/${name}.ttf`);

let loaded: Promise<FontTypeface> | undefined;

/** The typeface of the papers, read once a call. Throws `FileError`. */
export function fonts(): Promise<FontTypeface> {
  loaded ??= read();
  return loaded;
}

async function read(): Promise<FontTypeface> {
  const { resolve } = createRequire(import.meta.url);
  try {
    const [regular, bold] = await Promise.all(FONTS.map((place) => readFile(resolve(place))));
    return createTypeface(new Uint8Array(regular as Buffer), new Uint8Array(bold as Buffer));
  } catch (error) {
    throw new FileError(
      `the papers' fonts can't be read: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}
