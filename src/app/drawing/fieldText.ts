import type { DesignText } from '../../design/design.ts';
import { UNIT_OF } from '../../design/fields/kinds.ts';
import { roundForReading } from '../../design/problem.ts';
import { placeOf, typedAt } from '../store/fieldAt.ts';

/** A longer text would be wider than the drawing; the form shows it whole. */
const LONGEST = 16;

/** What was typed for a number's field, in three dresses. */
export interface FieldText {
  /** As typed: what an input begins with. */
  readonly typed: string;
  /** On the drawing: millimetres bare, degrees with their sign. */
  readonly shown: string;
  /** Read out: with its unit. */
  readonly spoken: string;
  readonly label: string;
}

/** The same of a number that is solved: in brackets, a reference dimension (ISO 129). Millimetres or degrees. */
export function solvedText(path: string, value: number, mark = ''): Pick<FieldText, 'shown' | 'spoken'> {
  const place = placeOf(path);
  if (!place) throw new Error(`no field at ${path}`);
  const { label, kind } = place.field;
  const number = String(roundForReading(value)).replace('-', '−');
  return kind === 'angle'
    ? { shown: `(${mark}${number}°)`, spoken: `${label} ${number}°, solved` }
    : { shown: `(${mark}${number})`, spoken: `${label} ${mark}${number} mm, solved` };
}

/** The texts of a field at `group.field`; a path that names no field is a fault of the program. */
export function fieldText(text: DesignText, path: string): FieldText {
  const place = placeOf(path);
  if (!place) throw new Error(`no field at ${path}`);
  const typed = String(typedAt(text, place)).trim();
  const { label, kind } = place.field;
  const unit = kind === 'length' || kind === 'angle' ? UNIT_OF[kind] : '';
  const bare = !/[^\d\s.,/+-]/.test(typed);
  const whole = bare && unit === '°' ? `${typed}°` : typed;
  return {
    typed,
    label,
    shown: whole.length > LONGEST ? `${whole.slice(0, LONGEST - 1)}…` : whole,
    spoken: bare && unit === 'mm' ? `${typed} mm` : whole,
  };
}
