import { path, SMALL, words } from '../paper/inks.ts';
import type { Ink } from '../sheet.ts';
import type { SaddlePlace } from './saddleFromAbove.ts';

/** The columns' right edges, a row, the head, mm. */
const COLUMNS = [14, 36, 58] as const;
const WIDTH = 62;
const ROW = 4;
const HEAD = 7.5;
const FIGURES = 2.2;

export function saddleTableSize(strings: number): { readonly width: number; readonly height: number } {
  return { width: WIDTH, height: HEAD + ROW * strings + 2 };
}

/** Each string's height and filing, in the middle below a height `top`, mm. */
export function saddleTable(
  strings: readonly SaddlePlace[],
  top: number,
  say: (mm: number) => string,
): readonly Ink[] {
  const left = -WIDTH / 2;
  const cell = (text: string, column: 0 | 1 | 2, base: number) =>
    words(text, [left + COLUMNS[column], base], { height: FIGURES, anchor: 'end' });
  const rule = (y: number) =>
    path('text', 'detail', [
      [left, y],
      [left + WIDTH, y],
    ]);
  const base = (row: number) => top - HEAD - ROW * (row + 1) + 1;
  return [
    cell('string', 0, top - 2.4),
    cell('height', 1, top - 2.4),
    cell('filed', 2, top - 2.4),
    words('over the floor at the middle; + toward the tail', [0, top - 5.8], {
      height: SMALL,
      anchor: 'middle',
    }),
    rule(top - HEAD + 0.4),
    ...strings.flatMap(({ height, filed }, i) => [
      cell(String(i + 1), 0, base(i)),
      cell(say(height), 1, base(i)),
      cell(say(filed), 2, base(i)),
    ]),
    rule(base(strings.length - 1) - 1.4),
  ];
}
