import { applies } from '../../design/applies.ts';
import type { Design } from '../../design/design.ts';
import { type Field, isListField, isNumberField, UNIT_OF } from '../../design/fields/kinds.ts';
import { fieldsOf, GROUPS } from '../../design/fields.ts';
import { followedPath } from '../../design/followed.ts';

/** What one of two designs has in a field: a number, a word, or either for each string, undefined where none is given. */
export type DifferenceValue = string | number | readonly (string | number | undefined)[] | null;

/** A dimension or choice in which two designs differ, solved numbers as they came out. */
export interface Difference {
  readonly path: string;
  readonly label: string;
  readonly unit: string;
  /** A choice as it is worded; null where the field isn't used. */
  readonly a: DifferenceValue;
  readonly b: DifferenceValue;
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
          a: told(one, field),
          b: told(other, field),
          by: numbers ? other - one : undefined,
        },
      ];
    }),
  );
}

type Value = Exclude<DifferenceValue, null> | undefined;

/** Undefined where the field isn't used; a solved number always is, and one that follows an aim. */
function valueAt(design: Design, group: keyof Design, key: string, field: Field): Value {
  const value = (design[group] as Readonly<Record<string, Value>>)[key];
  const path = `${group}.${key}`;
  const found = (isNumberField(field) && field.by !== undefined) || followedPath(design.aim) === path;
  return found || applies(path, design) ? value : undefined;
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

function told(value: Value, field: Field): DifferenceValue {
  if (value === undefined) return null;
  return field.kind === 'choice' ? (field.choices[value as string] ?? '') : value;
}
