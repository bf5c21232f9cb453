import { pitchFrequency } from '../trade/notes.ts';
import { type Design, type DesignText, FORMAT, type Typed, VERSION } from './design.ts';
import { type Field, type ListField, type NotesField, type NumberField, UNIT_OF } from './fields/kinds.ts';
import { fieldsOf, GROUPS } from './fields.ts';
import { forgottenUnit } from './forgottenUnit.ts';
import { migrate } from './migrate.ts';
import { DesignError, type Problem } from './problem.ts';
import { ACCEPTED, readQuantity } from './quantity.ts';

/** Most strings that a bridge of this kind has. */
const MOST_STRINGS = 12;
/** Tones that can be heard as notes, Hz. */
const [LOWEST, HIGHEST] = [16, 2000];
/** Line breaks and what a terminal or a file's header would take for an order. */
const CONTROL = /\p{Cc}/u;

/** A design as typed and as checked values. */
export interface ReadDesign {
  readonly text: DesignText;
  readonly design: Design;
}

/**
 * Reads a design from plain JSON. Every field is checked for itself: unknown names, wrong units, NaN, values out
 * of range and unknown choices are refused, each with its path. Whether the dimensions fit together is for the
 * curves to say. Throws `DesignError` with every problem found.
 */
export function readDesign(json: unknown): ReadDesign {
  if (!isRecord(json)) throw new DesignError([notADesign(describe(json))]);
  if (json.format !== FORMAT) throw new DesignError([notADesign(`format ${describe(json.format)}`)]);
  const newest = migrate(json);
  if (newest.version !== VERSION) throw new DesignError([wrongVersion(newest.version)]);

  const problems: Problem[] = [];
  const text: Record<string, unknown> = { format: FORMAT, version: VERSION };
  const design: Record<string, unknown> = {};
  for (const key of Object.keys(newest)) {
    if (key !== 'format' && key !== 'version' && !(GROUPS as readonly string[]).includes(key)) {
      problems.push(unknownField(key, GROUPS));
    }
  }
  for (const group of GROUPS) {
    const given = newest[group];
    if (!isRecord(given)) {
      problems.push(missing(group, given === undefined ? 'nothing' : describe(given), 'a group of fields'));
      continue;
    }
    const fields = fieldsOf(group);
    for (const key of Object.keys(given)) {
      if (!Object.hasOwn(fields, key)) problems.push(unknownField(`${group}.${key}`, Object.keys(fields)));
    }
    const values: Record<string, unknown> = {};
    const typed: Record<string, unknown> = {};
    for (const [key, field] of Object.entries(fields)) {
      const path = `${group}.${key}`;
      if (!Object.hasOwn(given, key)) {
        problems.push(missing(path, 'nothing', describeAllowed(field)));
        continue;
      }
      const result = readField(path, field, given[key]);
      if (Array.isArray(result)) problems.push(...result);
      else {
        values[key] = result.value;
        typed[key] = given[key];
      }
    }
    design[group] = values;
    text[group] = typed;
  }
  if (problems.length > 0) throw new DesignError(problems);
  return { text: text as DesignText, design: design as Design };
}

/** Reads one field's typed value. Gives its value, or the problems with it. */
export function readField(
  path: string,
  field: Field,
  given: unknown,
): { value: Design[keyof Design] | unknown } | Problem[] {
  switch (field.kind) {
    case 'choice':
      if (typeof given === 'string' && Object.hasOwn(field.choices, given)) return { value: given };
      return [
        {
          code: 'not-a-choice',
          path,
          value: describe(given),
          allowed: describeAllowed(field),
          remedy: 'Choose one of these.',
        },
      ];
    case 'text':
      if (
        typeof given === 'string' &&
        given.length <= field.maxLength &&
        given.trim() !== '' &&
        !CONTROL.test(given)
      )
        return { value: given };
      return [
        {
          code: 'not-a-value',
          path,
          value: describe(given),
          allowed: describeAllowed(field),
          remedy: 'Give it a short name.',
        },
      ];
    case 'numbers':
    case 'measures':
    case 'notes':
      return readList(path, field, given);
    default: {
      const one = readNumber(path, field.kind, field, given);
      return typeof one === 'number' ? { value: one } : [one];
    }
  }
}

function readList(path: string, field: ListField, given: unknown): { value: unknown } | Problem[] {
  if (!Array.isArray(given) || given.length === 0 || given.length > MOST_STRINGS) {
    return [
      {
        code: 'not-a-value',
        path,
        value: describe(given),
        allowed: describeAllowed(field),
        remedy: 'Give one for each string, treble first.',
      },
    ];
  }
  const problems: Problem[] = [];
  const value = given.map((entry, i) => {
    const at = `${path}.${i + 1}`;
    if (field.kind === 'measures' && entry === '') return undefined;
    const one = field.kind === 'notes' ? readNote(at, field, entry) : readNumber(at, field.of, field, entry);
    if (typeof one !== 'object') return one;
    problems.push(one);
    return undefined;
  });
  return problems.length > 0 ? problems : { value };
}

function readNote(path: string, { maxLength }: NotesField, given: unknown): string | Problem {
  const hz = typeof given === 'string' && given.length <= maxLength ? pitchFrequency(given) : undefined;
  if (hz !== undefined && !CONTROL.test(given as string) && hz >= LOWEST && hz <= HIGHEST)
    return given as string;
  const allowed = `a note with its octave such as E4, F#3 or Bb2, or a frequency of ${LOWEST} to ${HIGHEST} Hz such as 82.4 Hz`;
  return { code: 'not-a-value', path, value: describe(given), allowed, remedy: `Type ${allowed}.` };
}

function readNumber(
  path: string,
  kind: NumberField['kind'],
  range: { readonly min: number; readonly max: number },
  given: unknown,
): number | Problem {
  const allowed = rangeText(kind, range);
  if (typeof given !== 'number' && typeof given !== 'string') {
    return {
      code: 'not-a-value',
      path,
      value: describe(given),
      allowed: ACCEPTED[kind],
      remedy: `Type ${ACCEPTED[kind]}.`,
    };
  }
  const read = readQuantity(given, kind);
  if (!read.ok)
    return {
      code: read.why,
      path,
      value: describe(given),
      allowed: read.accepted,
      remedy: `Type ${read.accepted}.`,
    };
  if (kind === 'count' && !Number.isInteger(read.value)) {
    return {
      code: 'not-a-value',
      path,
      value: describe(given),
      allowed: `a whole number, ${allowed}`,
      remedy: 'Type a whole number.',
    };
  }
  // Inches rarely land on a range's end exactly: a hundredth of a micrometre is no difference in wood.
  const slack = 1e-5;
  if (read.value < range.min - slack || read.value > range.max + slack) {
    return {
      code: 'out-of-range',
      path,
      value: describe(given),
      allowed,
      remedy: `${kind === 'length' ? forgottenUnit(given, range) : ''}Keep it within ${allowed}.`,
    };
  }
  return Math.min(range.max, Math.max(range.min, read.value));
}

function rangeText(kind: NumberField['kind'], { min, max }: { readonly min: number; readonly max: number }) {
  const unit = UNIT_OF[kind];
  return `${min} to ${max}${unit === '' ? '' : ` ${unit}`}`;
}

/** What a field allows, in words. */
export function describeAllowed(field: Field): string {
  switch (field.kind) {
    case 'choice':
      return Object.keys(field.choices).join(', ');
    case 'text':
      return `1 to ${field.maxLength} characters in one line`;
    case 'notes':
      return `1 to ${MOST_STRINGS} notes such as E4`;
    case 'numbers':
      return `1 to ${MOST_STRINGS}, each ${rangeText(field.of, field)}`;
    case 'measures':
      return `1 to ${MOST_STRINGS}, each blank or ${rangeText(field.of, field)}`;
    default:
      return rangeText(field.kind, field);
  }
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A given value as short text for a message. */
export function describe(value: unknown): string {
  if (typeof value === 'number' && !Number.isFinite(value)) return String(value);
  // what is nested is not written out: it may be any depth
  const nested = (entries: readonly unknown[]) =>
    entries.some((entry) => typeof entry === 'object' && entry !== null);
  if (Array.isArray(value) && (value.length > 12 || nested(value))) return `a list of ${value.length}`;
  if (isRecord(value) && nested(Object.values(value))) return 'a group';
  const text = JSON.stringify(value as Typed) ?? 'nothing';
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

/** A name from a file as it may be said: no longer than a line, and nothing that a terminal obeys. */
function shortened(name: string): string {
  const plain = name.replace(/\p{Cc}/gu, '·');
  return plain.length > 60 ? `${plain.slice(0, 57)}…` : plain;
}

const notADesign = (value: string): Problem => ({
  code: 'not-a-design',
  path: '',
  value,
  allowed: `a JSON object with "format": "${FORMAT}"`,
  remedy: 'Open a design file written by this program, or start from one of the starters.',
});

const wrongVersion = (value: unknown): Problem => ({
  code: 'newer-version',
  path: 'version',
  value: describe(value),
  allowed: `version 1 to ${VERSION}`,
  remedy: 'This file was written by another version of the program: use that version, or a newer one.',
});

const unknownField = (path: string, known: readonly string[]): Problem => ({
  code: 'unknown-field',
  path: shortened(path),
  value: 'an unknown field',
  allowed: known.join(', '),
  remedy: 'Check its spelling, or take it out.',
});

const missing = (path: string, value: string, allowed: string): Problem => ({
  code: 'missing-field',
  path,
  value,
  allowed,
  remedy: 'Add it; `pinbridge new` prints a whole design to start from.',
});
