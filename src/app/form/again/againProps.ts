import type { ListField } from '../../../design/fields/kinds.ts';

/** What the tables of measures are given. */
export interface AgainProps {
  readonly field: ListField;
  /** Whether something is wrong with an entry: `action.cents.3`. */
  readonly isFaulty: (path: string) => boolean;
  /** Id of what is said to be wrong. */
  readonly faults: string;
}
