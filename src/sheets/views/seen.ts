import type { Ink } from '../sheet.ts';

/** One view of the part in its own millimetres. */
export interface Seen {
  readonly inks: readonly Ink[];
  /** Of the part's outline: left, low, right, high. */
  readonly extent: readonly [number, number, number, number];
}
