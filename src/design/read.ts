import { type Design, type DesignText, FORMAT, type Typed, VERSION } from './design.ts';
import { type Field, fieldsOf, GROUPS, type NumberField, UNIT_OF } from './fields.ts';
import { forgottenUnit } from './forgottenUnit.ts';
import { DesignError, type Problem } from './problem.ts';
import { ACCEPTED, readQuantity } from './quantity.ts';

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
  if (json.version !== VERSION) throw new DesignError([wrongVersion(json.version)]);

  const problems: Problem[] = [];
  const text: Record<string, unknown> = { format: FORMAT, version: VERSION };
  const design: Record<string, unknown> = {};
  for (const key of Object.keys(json)) {
    if (key !== 'format' && key !== 'version' && !(GROUPS as readonly string[]).includes(key)) {
      problems.push(unknownField(key, GROUPS));
    }
  }
  for (const group of GROUPS) {
    const given = json[group];
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
      if (typeof given === 'string' && given.length <= field.maxLength && given.trim() !== '')
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
    case 'lengths': {
      if (!Array.isArray(given) || given.length === 0 || given.length > 12) {
        return [
          {
            code: 'not-a-value',
            path,
            value: describe(given),
            allowed: describeAllowed(field),
            remedy: 'Give one length for each string, treble first.',
          },
        ];
      }
      const problems: Problem[] = [];
      const value = given.map((entry, i) => {
        const one = readNumber(`${path}.${i + 1}`, 'length', field, entry);
        if (typeof one === 'number') return one;
        problems.push(one);
        return Number.NaN;
      });
      return problems.length > 0 ? problems : { value };
    }
    default: {
      const one = readNumber(path, field.kind, field, given);
      return typeof one === 'number' ? { value: one } : [one];
    }
  }
}

function readNumber(
  path: string,
  kind: NumberField['kind'],
  range: { readonly min: number; readonly max: number },
  given: unknown,
): number | Problem {
  const unit = UNIT_OF[kind];
  const allowed = `${range.min} to ${range.max}${unit === '' ? '' : ` ${unit}`}`;
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
  return read.value;
}

/** What a field allows, in words. */
export function describeAllowed(field: Field): string {
  switch (field.kind) {
    case 'choice':
      return Object.keys(field.choices).join(', ');
    case 'text':
      return `1 to ${field.maxLength} characters`;
    case 'lengths':
      return `1 to 12 lengths, each ${field.min} to ${field.max} mm`;
    default: {
      const unit = UNIT_OF[field.kind];
      return `${field.min} to ${field.max}${unit === '' ? '' : ` ${unit}`}`;
    }
  }
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A given value as short text for a message. */
export function describe(value: unknown): string {
  if (typeof value === 'number' && !Number.isFinite(value)) return String(value);
  const text = JSON.stringify(value as Typed) ?? 'nothing';
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
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
  allowed: `version ${VERSION}`,
  remedy: 'This file was written by another version of the program: use that version, or a newer one.',
});

const unknownField = (path: string, known: readonly string[]): Problem => ({
  code: 'unknown-field',
  path,
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
