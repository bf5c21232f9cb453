import type { Holes } from '../../models/curves/curves.ts';
import type { Units } from './lengthText.ts';
import type { Paper } from './sheet.ts';

/** What the papers of one design have in common. */
export interface PapersOptions {
  readonly paper: Paper;
  readonly units: Units;
  /** Whether the drawing shows the pin holes as drilled or as reamed. */
  readonly holes: Holes;
  /** As it is to be printed. */
  readonly date: string;
}
