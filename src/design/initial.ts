import { type DesignText, FORMAT, VERSION } from './design.ts';
import { fieldsOf, GROUPS } from './fields.ts';

/** The design that every field's default makes. */
export function initialDesign(): DesignText {
  const groups = GROUPS.map((group) => [
    group,
    Object.fromEntries(Object.entries(fieldsOf(group)).map(([key, field]) => [key, field.default])),
  ]);
  return { format: FORMAT, version: VERSION, ...Object.fromEntries(groups) } as DesignText;
}
