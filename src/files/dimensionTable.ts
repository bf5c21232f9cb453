import { applies } from '../design/applies.ts';
import type { Design, DesignText } from '../design/design.ts';
import { type Field, isListField, isNumberField, UNIT_OF } from '../design/fields/kinds.ts';
import { fieldsOf, GROUPS, type Group } from '../design/fields.ts';
import type { Aimed } from '../report/aim/aimedDesign.ts';
import type { Fit, SolvedNumber } from '../trade/fit/placeDesign.ts';
import { writeCsv } from './csv.ts';
import { decimal } from './decimal.ts';

/** One line of the dimension table. */
export interface DimensionRow {
  readonly group: Group;
  /** `group.field`, with the string's number from the treble (1) where there is one for each: `strings.gauges.1`. */
  readonly path: string;
  readonly label: string;
  /** A number in its unit, words, or `null` where the value was left blank or has no end (a flat fretboard's radius). */
  readonly value: number | string | null;
  readonly unit: string;
  /** What was typed; empty for a number that is solved or follows an aim: what stands in its field then has no say. */
  readonly typed: string;
  /** How it was found: solved from the guitar, following what the design aims at, or set by hand. */
  readonly by: 'solved' | 'follows' | 'set';
}

/** What the table is made from: an `AcceptedDesign`. */
interface Source {
  readonly text: DesignText;
  readonly design: Design;
  readonly fit: Pick<Fit, 'solved'>;
  readonly aimed?: Pick<Aimed, 'path'> | undefined;
}

/**
 * Every field of a design that has a say, in the order of the table, solved numbers and what follows an aim in place. The
 * limits that findings are held against are no dimensions.
 */
export function dimensionTable({ text, design, fit, aimed }: Source): readonly DimensionRow[] {
  const solved: Readonly<Record<string, SolvedNumber>> = fit.solved;
  return GROUPS.filter((group) => group !== 'limits').flatMap((group) =>
    Object.entries(fieldsOf(group)).flatMap(([key, field]) => {
      const path = `${group}.${key}`;
      const follows = path === aimed?.path;
      if (!follows && !(path in solved) && !applies(path, design)) return [];
      const by = follows ? 'follows' : (solved[path]?.by ?? 'set');
      const value = (design[group] as Readonly<Record<string, unknown>>)[key];
      const typed = by !== 'set' ? '' : (text[group] as Readonly<Record<string, unknown>>)[key];
      return rows({ group, path, by }, field, value, typed);
    }),
  );
}

function rows(
  head: Pick<DimensionRow, 'group' | 'path' | 'by'>,
  field: Field,
  value: unknown,
  typed: unknown,
): readonly DimensionRow[] {
  const row = (path: string, label: string, one: unknown, said: unknown): DimensionRow => ({
    ...head,
    path,
    label,
    value: shownValue(field, one),
    unit: unitOf(field),
    typed: String(said ?? ''),
  });
  if (!isListField(field)) return [row(head.path, field.label, value, typed)];
  const [values, all] = [value, typed] as [readonly unknown[], readonly unknown[]];
  return values.map((one, i) => row(`${head.path}.${i + 1}`, `${field.label}, string ${i + 1}`, one, all[i]));
}

function shownValue(field: Field, value: unknown): DimensionRow['value'] {
  // a millionth: noise of the arithmetic is no information
  if (typeof value === 'number') return Number.isFinite(value) ? Number(decimal(value, 6)) : null;
  if (field.kind === 'choice') return field.choices[String(value)] ?? String(value);
  return value === undefined ? null : String(value);
}

function unitOf(field: Field): string {
  if (isNumberField(field)) return UNIT_OF[field.kind];
  return field.kind === 'numbers' || field.kind === 'measures' ? UNIT_OF[field.of] : '';
}

const COLUMNS = ['group', 'path', 'label', 'value', 'unit', 'typed', 'by'] as const;

/** The table as CSV with a line of heads. */
export function dimensionCsv(table: readonly DimensionRow[]): string {
  const text = (value: DimensionRow['value']) =>
    typeof value === 'number' ? decimal(value, 6) : (value ?? '');
  return writeCsv([COLUMNS, ...table.map((row) => COLUMNS.map((column) => text(row[column])))]);
}

/** The table as JSON: its rows as objects. */
export function dimensionJson(name: string, table: readonly DimensionRow[]): string {
  return `${JSON.stringify({ name, dimensions: table }, null, 2)}\n`;
}
