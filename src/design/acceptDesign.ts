import type { Curves } from '../../models/curves/curves.ts';
import { drawCurves } from '../../models/curves/drawCurves.ts';
import { type Fit, placeDesign } from '../trade/fit/placeDesign.ts';
import { type ReadDesign, readDesign } from './read.ts';

/** A design that can be made: its `design` has the solved numbers in place. */
export interface AcceptedDesign extends ReadDesign {
  readonly fit: Fit;
  readonly curves: Curves;
}

/**
 * The whole of validation: reads a design from JSON, solves what it leaves to the guitar and draws it. Throws
 * `DesignError`; the kernel is never asked.
 */
export function acceptDesign(json: unknown): AcceptedDesign {
  const { text, design: read } = readDesign(json);
  const { design, fit } = placeDesign(read);
  return { text, design, fit, curves: drawCurves(design) };
}
