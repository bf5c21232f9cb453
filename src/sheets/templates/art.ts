import type { Box } from '../paper/box.ts';
import type { Ink } from '../sheet.ts';

/** A template in the part's millimetres, which are the paper's: always full size. */
export interface Art {
  readonly id: string;
  readonly title: string;
  readonly inks: readonly Ink[];
  /** Round everything drawn. */
  readonly box: Box;
  /** How it is used. */
  readonly notes: readonly string[];
}
