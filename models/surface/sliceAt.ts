import type { Curves, Holes } from '../curves/curves.ts';
import { chordsOf } from './chords.ts';
import { edgeBites } from './edgeBites.ts';
import { facesOf, partsOf } from './parts.ts';
import { type Slice, slice } from './slice.ts';

/** The section square to X at one place. */
export function sliceAt(curves: Curves, holes: Holes, x: number): Slice {
  const parts = partsOf(curves, holes);
  return slice(parts, facesOf(parts), chordsOf(curves.outline)(x), edgeBites(curves)(x));
}
