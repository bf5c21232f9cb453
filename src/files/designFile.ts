import type { DesignText } from '../design/design.ts';
import { fieldsOf, GROUPS } from '../design/fields.ts';
import { DesignError } from '../design/problem.ts';
import { whereJsonBreaks } from './whereJsonBreaks.ts';

/**
 * A design as it stands in a file: JSON that a person can read, its fields in the table's order whatever order they
 * came in, so that two files of one design are the same characters.
 */
export function writeDesign(text: DesignText): string {
  const groups = GROUPS.map((group) => {
    const given: Readonly<Record<string, unknown>> = text[group];
    return [group, Object.fromEntries(Object.keys(fieldsOf(group)).map((key) => [key, given[key]]))];
  });
  const ordered = { format: text.format, version: text.version, ...Object.fromEntries(groups) };
  return `${JSON.stringify(ordered, null, 2)}\n`;
}

/** The JSON in a design file's characters, not yet read as a design. Throws a `DesignError` that says where it breaks. */
export function parseDesignFile(characters: string): unknown {
  // some editors put a byte order mark before UTF-8
  const json = characters.replace(/^\uFEFF/, '');
  try {
    return JSON.parse(json);
  } catch {
    const place = whereJsonBreaks(json);
    const where = place ? ` at line ${place.line}, column ${place.column}` : '';
    throw new DesignError([
      {
        code: 'broken-file',
        path: '',
        value: json.trim() === '' ? 'it is empty' : `it stops being JSON${where}`,
        allowed: 'a design file as this program writes it',
        remedy: 'Mend it there, or take another file.',
      },
    ]);
  }
}
