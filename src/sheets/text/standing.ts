import type { Paper } from '../sheet.ts';

/** A paper stood upright: text reads better on short lines. */
export function standing({ name, width, height }: Paper): Paper {
  return { name, width: Math.min(width, height), height: Math.max(width, height) };
}
