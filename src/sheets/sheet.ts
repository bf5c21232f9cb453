import type { Chain, Point } from '../../models/curves/segment.ts';

/** A paper lying or standing, mm. */
export interface Paper {
  readonly name: 'A4' | 'Letter';
  readonly width: number;
  readonly height: number;
}

/** Both are drawn on lying. Letter is 11 × 8½ in. */
export const PAPERS = {
  A4: { name: 'A4', width: 297, height: 210 },
  Letter: { name: 'Letter', width: 279.4, height: 215.9 },
} as const satisfies Readonly<Record<string, Paper>>;

/** What a line says by its kind, after ISO 128: see `PENS`. */
export type Pen = 'outline' | 'detail' | 'hidden' | 'centre' | 'cutting' | 'hatch' | 'frame';

interface PenStyle {
  /** mm */
  readonly width: number;
  /** Dash, gap, dash, gap … in mm; empty for a continuous line. */
  readonly dashes: readonly number[];
}

/** Wide lines are twice as wide as narrow ones (ISO 128, from memory); the lengths of dashes are those of small drawings. */
export const PENS: Readonly<Record<Pen, PenStyle>> = {
  outline: { width: 0.5, dashes: [] },
  detail: { width: 0.25, dashes: [] },
  hidden: { width: 0.25, dashes: [2, 1] },
  centre: { width: 0.18, dashes: [6, 1, 0.6, 1] },
  cutting: { width: 0.35, dashes: [6, 1, 0.6, 1] },
  hatch: { width: 0.13, dashes: [] },
  frame: { width: 0.5, dashes: [] },
};

/** What something on a sheet belongs to: a layer of the same name in formats that have layers. */
export type Layer =
  | 'frame'
  | 'outline'
  | 'slot'
  | 'pins'
  | 'profile'
  | 'saddle'
  | 'hidden'
  | 'centre'
  | 'section'
  | 'dimensions'
  | 'marks'
  | 'text';

/** One thing on a sheet, mm from its lower left corner, y up. */
export type Ink =
  | {
      readonly kind: 'line';
      readonly layer: Layer;
      readonly pen: Pen;
      /** Lines and arcs, each starting where the one before ends. */
      readonly chain: Chain;
      /** Whether the last ends where the first starts. */
      readonly closed: boolean;
      /** Filled with ink (an arrowhead), or with paper (to hide what lies below), and no line drawn round it. */
      readonly fill?: 'ink' | 'paper';
    }
  | {
      readonly kind: 'circle';
      readonly layer: Layer;
      readonly pen: Pen;
      readonly centre: Point;
      readonly radius: number;
    }
  | {
      readonly kind: 'text';
      readonly layer: Layer;
      readonly text: string;
      /** Where its base line begins, is halved or ends. */
      readonly at: Point;
      readonly anchor: 'start' | 'middle' | 'end';
      /** Height of a capital letter, mm. */
      readonly height: number;
      /** Degrees, counter-clockwise. */
      readonly angle: number;
      readonly bold?: boolean;
    };

/** One page at its own scale. */
export interface Sheet {
  /** Stable and short, part of file names: `views`, `outline`. */
  readonly id: string;
  readonly title: string;
  readonly paper: Paper;
  /** Millimetres on paper for one of the part: 1 is full size. */
  readonly scale: number;
  readonly inks: readonly Ink[];
}

/** How wide text comes out, mm: what lays a sheet out must know it. */
export interface Typeface {
  /** @param height of a capital letter, mm */
  width(text: string, height: number, bold?: boolean): number;
}
