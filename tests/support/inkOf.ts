import { chainLength, enclosedArea } from '../../models/curves/chain.ts';
import type { Ink, Layer, Sheet } from '../../src/sheets/sheet.ts';

type Stroke = Extract<Ink, { readonly kind: 'line' }>;

/** A sheet's lines on a layer. */
export function strokes({ inks }: Pick<Sheet, 'inks'>, layer: Layer): readonly Stroke[] {
  return inks.filter((ink): ink is Stroke => ink.kind === 'line' && ink.layer === layer);
}

/** A sheet's closed line on a layer that encloses most. */
export function greatest(sheet: Pick<Sheet, 'inks'>, layer: Layer): Stroke {
  const closed = strokes(sheet, layer).filter((ink) => ink.closed);
  const found = closed.sort((a, b) => Math.abs(enclosedArea(b.chain)) - Math.abs(enclosedArea(a.chain)))[0];
  if (!found) throw new Error(`nothing closed on ${layer}`);
  return found;
}

/** Area and length of a closed line. */
export const measure = ({ chain }: Stroke) => ({ area: enclosedArea(chain), length: chainLength(chain) });
