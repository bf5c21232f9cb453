import type { Curves } from '../../models/curves/curves.ts';
import { drawCurves } from '../../models/curves/drawCurves.ts';
import { type ReadDesign, readDesign } from './read.ts';

export interface AcceptedDesign extends ReadDesign {
  readonly curves: Curves;
}

/** The whole of validation: reads a design from JSON and draws it. Throws `DesignError`; the kernel is never asked. */
export function acceptDesign(json: unknown): AcceptedDesign {
  const read = readDesign(json);
  return { ...read, curves: drawCurves(read.design) };
}
