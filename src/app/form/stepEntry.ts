import type { ListField } from '../../design/fields/kinds.ts';
import { stepNote } from './strings/stepNote.ts';
import { stepTyped } from './typedForm.ts';

/** Strings are sold by thousandths of an inch, mm. */
const GAUGE = 0.0254;
/** A measure on the guitar, mm. */
const MEASURE = 0.1;
const DENSITY = 100;
const CENTS = 0.5;

/** An entry of a list moved by a number of steps, in the manner in which it was typed: a note goes by semitones. */
export function stepEntry(typed: number | string, field: ListField, steps: number): number | string {
  if (field.kind === 'notes') return stepNote(String(typed), steps);
  const { of, min, max, label, help } = field;
  const step =
    of === 'density' ? DENSITY : of === 'cents' ? CENTS : field.kind === 'measures' ? MEASURE : GAUGE;
  return stepTyped(typed, { kind: of, min, max, step, label, help, default: '' }, steps);
}
