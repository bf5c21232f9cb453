import { type ReadDesign, readDesign } from '../../src/design/read.ts';
import type { Curves } from './curves.ts';
import { drawCurves } from './drawCurves.ts';

export interface AcceptedDesign extends ReadDesign {
  readonly curves: Curves;
}

/** The whole of validation: reads a design from JSON and draws it. Throws `DesignError`; the kernel is never asked. */
export function acceptDesign(json: unknown): AcceptedDesign {
  const read = readDesign(json);
  return { ...read, curves: drawCurves(read.design) };
}
