import { textWidth } from './textWidth.ts';

/** What stands between two columns. */
const GAP = '  ';

/**
 * Lines of a table for a terminal: the first column to the left, all others to the right, heads included, aligned by
 * the columns that characters take. Rows may be shorter than the head.
 */
export function textTable(head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  const all = [head, ...rows];
  const widths = head.map((_, c) => Math.max(...all.map((row) => textWidth(row[c] ?? ''))));
  return all.map((row) =>
    head
      .map((_, c) => {
        const cell = row[c] ?? '';
        const air = ' '.repeat((widths[c] ?? 0) - textWidth(cell));
        return c === 0 ? cell + air : air + cell;
      })
      .join(GAP)
      .trimEnd(),
  );
}
