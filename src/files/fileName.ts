import type { Holes } from '../../models/curves/curves.ts';
import { partName } from './partName.ts';

/** What is written: STL says how far its facets may stray, mm. */
export type FileKind = { readonly format: 'step' } | { readonly format: 'stl'; readonly deviationMm: number };

/**
 * The name of a file of the exact solid: `Heron_as-drilled.step`, `Heron_as-reamed_mm_facets-0.02.stl`. A STEP file
 * carries its unit; an STL file has none, so its name says that it is millimetres.
 *
 * @param name the design's, or what it is to be called among others
 */
export function fileName(name: string, holes: Holes, kind: FileKind): string {
  const part = partName(name, holes);
  return kind.format === 'step' ? `${part}.step` : `${part}_mm_facets-${kind.deviationMm}.stl`;
}
