import { applies } from '../../design/applies.ts';
import type { Design } from '../../design/design.ts';
import { type Field, isListField, isNumberField, UNIT_OF } from '../../design/fields/kinds.ts';
import { fieldsOf, GROUPS } from '../../design/fields.ts';

/** A dimension or choice in which two designs differ, solved numbers as they came out. */
export interface Difference {
  readonly path: string;
  readonly label: string;
  readonly unit: string;
  /** As shown; empty where the field has no say. */
  readonly a: string;
  readonly b: string;
  /** b less a, where both are numbers. */
  readonly by: number | undefined;
}

/** Numbers nearer than this are alike, in the field's own unit: rounding of what is solved. */
const ALIKE = 5e-4;

/**
 * Every field in which two designs differ, in the table's order. Designs are as placed: their solved numbers stand in
 * their fields. The name is none of them.
 */
export function differences(a: Design, b: Design): readonly Difference[] {
  return GROUPS.flatMap((group) =>
    Object.entries(fieldsOf(group)).flatMap(([key, field]) => {
      const path = `${group}.${key}`;
      if (path === 'guitar.name') return [];
      const [one, other] = [valueAt(a, group, key, field), valueAt(b, group, key, field)];
      if (alike(one, other)) return [];
      const numbers = typeof one === 'number' && typeof other === 'number';
      return [
        {
          path,
          label: field.label,
          unit: isNumberField(field)
            ? UNIT_OF[field.kind]
            : isListField(field) && 'of' in field
              ? UNIT_OF[field.of]
              : '',
          a: say(one, field),
          b: say(other, field),
          by: numbers ? other - one : undefined,
        },
      ];
    }),
  );
}

type Value = string | number | readonly (string | number | undefined)[] | undefined;

/** Undefined where the field has no say; a solved number always has one. */
function valueAt(design: Design, group: keyof Design, key: string, field: Field): Value {
  const value = (design[group] as Readonly<Record<string, Value>>)[key];
  const solvable = isNumberField(field) && field.by !== undefined;
  return solvable || applies(`${group}.${key}`, design) ? value : undefined;
}

function alike(a: Value, b: Value): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) < ALIKE;
  if (Array.isArray(a) && Array.isArray(b)) {
    // measures that nobody took are the same however many they might be
    if ([...a, ...b].every((one) => one === undefined)) return true;
    return a.length === b.length && a.every((one, i) => alike(one, b[i] as Value));
  }
  return a === b;
}

function say(value: Value, field: Field): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return number(value);
  if (Array.isArray(value))
    return value.map((one) => (typeof one === 'number' ? number(one) : (one ?? '–'))).join(' ');
  return field.kind === 'choice' ? (field.choices[value as string] ?? '') : (value as string);
}

const number = (value: number) => String(Math.round(value * 1000) / 1000).replace('-', '−');
