import type { Point } from '../../../models/curves/segment.ts';

/** Width of every picture in its own units: about a pixel each, scaled with the column. */
export const WIDTH = 280;

/**
 * How a line is drawn (ISO 128): thick outlines, thin detail, chain lines for centres, dashes for what is not the part's.
 * `blue` is what is solved or measured, `faint` stays behind, `string` has a width of its own.
 */
export type Pen =
  | 'outline'
  | 'detail'
  | 'chain'
  | 'hidden'
  | 'blue'
  | 'blueHidden'
  | 'strong'
  | 'faint'
  | 'string';

/** What fills a closed line. */
export type Fill = 'none' | 'wood' | 'bone' | 'sheet';

/** One mark of a picture, px with y down. The name tells what it stands for. */
export type Mark =
  | {
      readonly kind: 'line';
      readonly name: string;
      readonly pen: Pen;
      readonly points: readonly Point[];
      readonly closed?: boolean;
      readonly fill?: Fill;
      /** px; else the pen's own. */
      readonly width?: number;
    }
  | {
      readonly kind: 'ring' | 'dot';
      readonly name: string;
      readonly pen: Pen;
      readonly at: Point;
      readonly radius: number;
    }
  | {
      readonly kind: 'word';
      readonly name: string;
      readonly text: string;
      readonly at: Point;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly tone: 'ink' | 'soft' | 'blue';
    };

/** A picture: its marks, back to front, in a box of `WIDTH` by its height. */
export interface Drawn {
  readonly height: number;
  readonly marks: readonly Mark[];
}

export const stroke = (name: string, pen: Pen, ...points: readonly Point[]): Mark => ({
  kind: 'line',
  name,
  pen,
  points,
});

export const word = (
  name: string,
  text: string,
  at: Point,
  anchor: 'start' | 'middle' | 'end' = 'middle',
  tone: 'ink' | 'soft' | 'blue' = 'ink',
): Mark => ({ kind: 'word', name, text, at, anchor, tone });
