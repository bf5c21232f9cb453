import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { applies } from '../../design/applies.ts';
import { isNumberField, type NumberField } from '../../design/fields/kinds.ts';
import { fieldsOf, GROUPS } from '../../design/fields.ts';
import type { SolvablePath } from '../../trade/fit/placeDesign.ts';
import type { Remedy } from './remedyOf.ts';
import { withChanges } from './withChanges.ts';

export const HUNDREDTH = 0.01;

/** A number of the design that may be changed, and where it stands. */
export interface Knob {
  readonly path: string;
  readonly field: NumberField;
  readonly now: number;
  /** What the guitar asks for, where something else is set by hand. */
  readonly asked: number | undefined;
  /** A number that was solved is set by hand from now on: the choice that says so. */
  readonly choice: string | undefined;
}

/** The number at a path as a knob; undefined where it has no say in this design, nor could have if set by hand. */
export function knobAt({ text, design, fit }: AcceptedDesign, path: string): Knob | undefined {
  const [group = '', key = ''] = path.split('.');
  const name = GROUPS.find((one) => one === group);
  const field = name && fieldsOf(name)[key];
  if (!name || !field || !isNumberField(field) || name === 'limits') return undefined;
  const choice = applies(path, text) || field.by === undefined ? undefined : `${group}.${field.by}`;
  if (!applies(path, choice ? withChanges(text, { [choice]: 'set' }) : text)) return undefined;
  const solved = fit.solved[path as SolvablePath];
  const now = (design as unknown as Readonly<Record<string, Readonly<Record<string, number>>>>)[name]?.[key];
  if (now === undefined) return undefined;
  return { path, field, now, choice, asked: solved?.by === 'set' ? solved.solved : undefined };
}

export function changesOf({ path, choice }: Knob, value: number): Remedy['changes'] {
  return { ...(choice && { [choice]: 'set' }), [path]: value };
}
