import type { Units } from './lengthText.ts';
import type { Paper } from './sheet.ts';

/** What the papers of one design have in common. */
export interface PapersOptions {
  readonly paper: Paper;
  readonly units: Units;
  /** As it is to be printed. */
  readonly date: string;
}
