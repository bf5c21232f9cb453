import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { createTypeface } from '../../src/sheets/typeface.ts';

const require = createRequire(import.meta.url);
const font = (name: string) =>
  new Uint8Array(readFileSync(require.resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`)));

/** The typeface of the papers, from its npm package. */
export const dejaVu = createTypeface(font('DejaVuSans'), font('DejaVuSans-Bold'));
