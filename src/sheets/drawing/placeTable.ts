import type { Point } from '../../../models/curves/segment.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { lengthText, type Units } from '../lengthText.ts';
import { path, SMALL, words } from '../paper/inks.ts';
import type { Ink } from '../sheet.ts';

/** Columns' right edges and a row's height, mm. */
const COLUMNS = [16, 34, 52] as const;
const ROW = 4;
const FIGURES = 2.2;
/** How far rows under a heading stand in, mm. */
const INDENT = 3;

export const TABLE_WIDTH = COLUMNS[2];

interface Row {
  readonly of: 'pin' | 'slot';
  readonly name: string;
  readonly at: Point;
}

/** Stands once over the slot's rows: with a row's name behind it, it would be wider than the names' column. */
const SLOT_ENDS = 'centre of slot end,';

/** Pin centres and the centres of the slot's round ends, from the origin. */
export function placeRows({
  curves: { pins, slot },
  design,
}: Pick<AcceptedDesign, 'curves' | 'design'>): readonly Row[] {
  const reach = slot.halfLength - slot.width / 2;
  const end = (side: 1 | -1): Point => [
    side * reach * Math.cos(slot.angle),
    side * reach * Math.sin(slot.angle),
  ];
  const treble = design.guitar.hand === 'left' ? -1 : 1;
  return [
    ...pins.map(({ at }, i): Row => ({ of: 'pin', name: `pin ${i + 1}`, at })),
    ...(slot.roundEnds
      ? ([
          { of: 'slot', name: 'bass', at: end(treble === 1 ? -1 : 1) },
          { of: 'slot', name: 'treble', at: end(treble) },
        ] as const)
      : []),
  ];
}

/** @returns mm */
export const tableHeight = (rows: readonly Row[]) => ROW * linesOf(rows).length + 15.5;

function linesOf(rows: readonly Row[]): readonly (Omit<Row, 'at'> & Partial<Row>)[] {
  return rows.flatMap((row, i) =>
    row.of === 'slot' && rows[i - 1]?.of !== 'slot' ? [{ of: 'slot', name: SLOT_ENDS }, row] : [row],
  );
}

/** The table of places. @param at its upper left corner, mm */
export function placeTable(rows: readonly Row[], [x, y]: Point, units: Units): readonly Ink[] {
  const line = (at: number) =>
    path('text', 'detail', [
      [x, at],
      [x + TABLE_WIDTH, at],
    ]);
  const figure = (text: string, column: 0 | 1 | 2, base: number) =>
    words(text, [x + COLUMNS[column], base], { height: FIGURES, anchor: 'end' });
  const head = y - 11.5;
  const lines = linesOf(rows);
  const base = (row: number) => head - 1.4 - ROW * (row + 1) + 1;
  return [
    words('Centres from the slot’s middle', [x, y - 2.4], { height: FIGURES, bold: true }),
    words('(for reference) x right, y to the nut', [x, y - 5.6], { height: SMALL }),
    figure('x', 1, head + 0.9),
    figure('y', 2, head + 0.9),
    line(head),
    ...lines.flatMap(({ of, name, at }, i) => [
      words(name, [x + (of === 'slot' && at ? INDENT : 0), base(i)], { height: FIGURES }),
      ...(at
        ? [
            figure(`(${lengthText(at[0], units)})`, 1, base(i)),
            figure(`(${lengthText(at[1], units)})`, 2, base(i)),
          ]
        : []),
    ]),
    line(base(lines.length - 1) - 1.4),
  ];
}
