import type { Box } from '../paper/box.ts';
import { boxLines } from '../paper/frame.ts';
import { words } from '../paper/inks.ts';
import type { Ink, Typeface } from '../sheet.ts';
import { wrapped } from './wrapped.ts';

/** A piece of a page of text that is never torn, as wide as the page. */
export interface Row {
  /** mm */
  readonly height: number;
  /** Stays on the page of the row after it. */
  readonly keep?: boolean;
  /** Stands over it when it begins a page: what else would be left behind on the page before. */
  readonly again?: Row;
  /** Parts what stands over it from what stands below: of no use where a page begins. */
  readonly blank?: true;
  /** What stands there when its upper edge lies at this height of the paper. */
  readonly inks: (top: number) => readonly Ink[];
}

/** From one line to the next, as a share of a capital's height: about 1¼ of the type's size. */
const LEADING = 1.75;
/** From a line's upper edge down to its base line, as the same share. */
const DOWN = 1.25;

export const lineHeight = (height: number): number => LEADING * height;
export const baseLine = (top: number, height: number): number => top - DOWN * height;

export interface Block {
  readonly left: number;
  readonly right: number;
  /** Of a capital, mm. */
  readonly height: number;
  readonly bold?: boolean;
}

/** Text in lines between two edges of the page. */
export function textBlock(text: string, block: Block, typeface: Typeface): Row {
  const { left, right, height, bold = false } = block;
  const lines = wrapped(text, height, right - left, typeface, bold);
  return {
    height: lines.length * lineHeight(height),
    inks: (top) =>
      lines.map((line, i) =>
        words(line, [left, baseLine(top - i * lineHeight(height), height)], { height, bold }),
      ),
  };
}

/** Empty paper. */
export const gap = (height: number, keep = false): Row => ({ height, keep, blank: true, inks: () => [] });

/** Rows as one that is not torn. */
export function stacked(rows: readonly Row[], keep = false): Row {
  return {
    height: rows.reduce((sum, row) => sum + row.height, 0),
    keep,
    inks: (top) => {
      let y = top;
      return rows.flatMap((row) => {
        const inks = row.inks(y);
        y -= row.height;
        return inks;
      });
    },
  };
}

/** Rows beside each other, from one upper edge. */
export function beside(rows: readonly Row[], keep = false): Row {
  return {
    height: Math.max(...rows.map(({ height }) => height)),
    keep,
    inks: (top) => rows.flatMap((row) => row.inks(top)),
  };
}

/** Rows in a ruled box. @param edges its left and right edge, mm; @param air inside above and below, mm */
export function boxed(
  rows: readonly Row[],
  { left, right }: Pick<Box, 'left' | 'right'>,
  pen: 'frame' | 'detail',
  air = 1.2,
  keep = false,
): Row {
  const inside = stacked(rows);
  const height = inside.height + 2 * air;
  return {
    height,
    keep,
    inks: (top) => [boxLines({ left, right, top, bottom: top - height }, pen), ...inside.inks(top - air)],
  };
}
