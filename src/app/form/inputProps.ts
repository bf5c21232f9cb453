import type { Typed } from '../../design/design.ts';

/** What every input of a field is given. */
export interface InputProps<Kind> {
  readonly path: string;
  readonly field: Kind;
  readonly typed: Typed;
  readonly invalid: boolean;
  /** Ids of the field's help, and of its problems if it has any. */
  readonly describedBy: string;
}
