/**
 * The kinds of field that the table of a design is made of. Lengths are millimetres, angles degrees. A choice's first
 * entry is not special: `default` says what is.
 */

interface Common {
  /** Said beside the field. */
  readonly label: string;
  /** One line for a person at the bench. */
  readonly help: string;
}

/** A number with a unit. `length` may also be typed in inches, feet or metres. */
export interface NumberField extends Common {
  readonly kind:
    | 'length'
    | 'angle'
    | 'count'
    | 'density'
    | 'modulus'
    | 'frequency'
    | 'ratio'
    | 'cents'
    | 'mass'
    | 'bending';
  readonly min: number;
  readonly max: number;
  /** The default, as a person would type it. */
  readonly default: number | string;
  /** What one press of an arrow key adds. */
  readonly step: number;
  /**
   * The choice of the same group that says whether this number is set by hand (its value is then `set`) or solved from
   * the guitar: the number as typed then has no say.
   */
  readonly by?: string;
}

export interface ChoiceField extends Common {
  readonly kind: 'choice';
  /** value → words on the screen */
  readonly choices: Readonly<Record<string, string>>;
  readonly default: string;
}

export interface TextField extends Common {
  readonly kind: 'text';
  readonly maxLength: number;
  readonly default: string;
}

/** A list of numbers, one for each string, treble first. */
export interface NumbersField extends Common {
  readonly kind: 'numbers';
  /** What each of them is. */
  readonly of: NumberField['kind'];
  readonly min: number;
  readonly max: number;
  readonly default: readonly (number | string)[];
}

/** Such a list in which an entry may be left blank (''). */
export interface MeasuresField extends Omit<NumbersField, 'kind'> {
  readonly kind: 'measures';
}

/** A list of short texts, one for each string, treble first. */
export interface NotesField extends Common {
  readonly kind: 'notes';
  readonly maxLength: number;
  readonly default: readonly string[];
}

export type ListField = NumbersField | MeasuresField | NotesField;
export type Field = NumberField | ChoiceField | TextField | ListField;

export function isNumberField(field: Field): field is NumberField {
  return 'step' in field;
}

export function isListField(field: Field): field is ListField {
  return field.kind === 'numbers' || field.kind === 'measures' || field.kind === 'notes';
}

export const UNIT_OF = {
  length: 'mm',
  angle: '°',
  count: '',
  density: 'kg/m³',
  modulus: 'GPa',
  frequency: 'Hz',
  ratio: '',
  cents: 'cents',
  mass: 'g',
  bending: 'N·m²',
} as const;

const number =
  (kind: NumberField['kind']) =>
  (
    label: string,
    range: readonly [number, number],
    initial: number | string,
    step: number,
    help: string,
  ): NumberField => ({ kind, label, min: range[0], max: range[1], default: initial, step, help });

export const length = number('length');
export const angle = number('angle');
export const count = number('count');
export const density = number('density');
export const modulus = number('modulus');
export const frequency = number('frequency');
export const ratio = number('ratio');
export const mass = number('mass');
export const bending = number('bending');

/** A number that is solved from the guitar unless the choice `by` of its group says `set`. */
export const solvable = (by: string, field: NumberField): NumberField => ({ ...field, by });

export const choice = <const C extends Readonly<Record<string, string>>>(
  label: string,
  choices: C,
  initial: keyof C & string,
  help: string,
) => ({ kind: 'choice', label, choices, default: initial, help }) as const satisfies ChoiceField;

/** Whether a number is solved from the guitar or set by hand. */
export const solvedOrSet = (label: string, help: string) =>
  choice(label, { solved: 'solved from the guitar', set: 'set by hand' }, 'solved', help);

export const text = (label: string, initial: string, maxLength: number, help: string): TextField => ({
  kind: 'text',
  label,
  default: initial,
  maxLength,
  help,
});
