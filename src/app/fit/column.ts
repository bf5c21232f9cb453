import type { Sourced } from './sourced.ts';

/** One column of a table by string. */
export interface Column {
  readonly key: string;
  readonly head: string;
  readonly unit: string;
  /** What the head says in full. */
  readonly name: string;
  /** As shown, string by string. */
  readonly values: readonly string[];
  /** Which of them are amiss. */
  readonly amiss?: readonly boolean[];
  /** How one string's value comes about. */
  sourced(i: number): Sourced;
  readonly path: string;
}
