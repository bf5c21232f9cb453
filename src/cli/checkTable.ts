import type { DesignCheck, FindingCheck } from './checkOf.ts';
import { wrapText } from './wrapText.ts';

/** Columns of a terminal that is not narrow, and what a finding's text is set in by. */
const [WIDTH, IN] = [100, '  '];

/** What the rules found of one design as a person reads it on a terminal. */
export function checkTable({ name, counts, findings }: DesignCheck): string {
  const head = `${name} · ${times(counts.error, 'error')} · ${times(counts.warning, 'warning')} · ${times(counts.note, 'note')}`;
  return `${[head, ...findings.map((one) => ['', ...finding(one)].join('\n'))].join('\n')}\n`;
}

const times = (count: number, what: string) => `${count} ${what}${count === 1 ? '' : 's'}`;

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
    ['look at', path],
    ...(remedy ? [['remedy', `${remedy.text}.`]] : []),
  ];
  const wide = Math.max(...rows.map(([what = '']) => what.length));
  return [
    `${severity}: ${id}`,
    ...wrapText(text, WIDTH - IN.length).map((line) => IN + line),
    ...rows.flatMap(([what = '', said = '']) =>
      wrapText(said, WIDTH - IN.length - wide - 2).map(
        (line, i) => `${IN}${(i === 0 ? what : '').padEnd(wide)}  ${line}`,
      ),
    ),
  ];
}
