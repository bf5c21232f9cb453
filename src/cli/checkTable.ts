import { fieldsOf, GROUPS } from '../design/fields.ts';
import { sayCounts, severityWord } from '../report/findings/severityWords.ts';
import type { DesignCheck, FindingCheck } from './checkOf.ts';
import { wrapText } from './wrapText.ts';

/** Columns of a terminal that is not narrow, and what a finding's text is set in by. */
const [WIDTH, IN] = [100, '  '];

/** What the rules found of one design as a person reads it on a terminal. */
export function checkTable({ name, findings }: DesignCheck): string {
  const head = `${name} · ${sayCounts(findings) || 'nothing found'}`;
  return `${[head, ...findings.map((one) => ['', ...finding(one)].join('\n'))].join('\n')}\n`;
}

/** A field as the form names it, and its path. */
function named(path: string): string {
  const [group, key = ''] = path.split('.');
  const field = GROUPS.flatMap((name) => (name === group ? [fieldsOf(name)[key]] : []))[0];
  return field ? `${field.label} (${path})` : path;
}

function finding({
  id,
  severity,
  text,
  found,
  limit,
  source,
  path,
  remedy,
}: FindingCheck): readonly string[] {
  const rows = [
    ['found', found],
    ['limit', limit],
    ['source', source],
    ['look at', named(path)],
    ...(remedy ? [['remedy', `${remedy.text}.`]] : []),
  ];
  const wide = Math.max(...rows.map(([what = '']) => what.length));
  return [
    `${severityWord(severity)} (${id})`,
    ...wrapText(text, WIDTH - IN.length).map((line) => IN + line),
    ...rows.flatMap(([what = '', said = '']) =>
      wrapText(said, WIDTH - IN.length - wide - 2).map(
        (line, i) => `${IN}${(i === 0 ? what : '').padEnd(wide)}  ${line}`,
      ),
    ),
  ];
}
