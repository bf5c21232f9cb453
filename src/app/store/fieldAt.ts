import type { DesignText, Typed } from '../../design/design.ts';
import type { Field } from '../../design/fields/kinds.ts';
import { fieldsOf, GROUPS, type Group } from '../../design/fields.ts';

/** A field's place in the design: `group.field`. */
export interface Place {
  readonly path: string;
  readonly group: Group;
  readonly key: string;
  readonly field: Field;
}

/** The place that a path names; a path into a list (`strings.diameters.3`) names the list. */
export function placeOf(path: string): Place | undefined {
  const [group, key] = path.split('.');
  const known = GROUPS.find((name) => name === group);
  if (!known || key === undefined) return undefined;
  const field = fieldsOf(known)[key];
  return field && { path: `${known}.${key}`, group: known, key, field };
}

/** The places of a group, in the order of the table. */
export function placesOf(group: Group): readonly Place[] {
  return Object.entries(fieldsOf(group)).map(([key, field]) => ({
    path: `${group}.${key}`,
    group,
    key,
    field,
  }));
}

/** What was typed for a field. */
export function typedAt(text: DesignText, { group, key }: Place): Typed {
  return (text[group] as Readonly<Record<string, Typed>>)[key] ?? '';
}

/** The design with one field typed anew. */
export function withTyped(text: DesignText, { group, key }: Place, typed: Typed): DesignText {
  return { ...text, [group]: { ...text[group], [key]: typed } };
}

/**
 * Typed characters as a design keeps them: a number where the file would show the very same characters, else the text.
 * So `9.5` is a number, while `3.0` and `3/8 in` stay as typed.
 */
export function kept(characters: string): number | string {
  const value = Number(characters);
  return characters !== '' && Number.isFinite(value) && String(value) === characters ? value : characters;
}
