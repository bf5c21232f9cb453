import type { Point } from '../../../models/curves/segment.ts';
import type { Box } from '../paper/box.ts';
import type { Ink, Layer } from '../sheet.ts';

/** A dimension or mark whose lines are drawn, and the places where its text may go. */
export interface Draft {
  readonly label: string;
  /** How it is set, if not as a dimension. */
  readonly style?: { readonly height?: number; readonly bold?: boolean; readonly layer?: Layer };
  readonly inks: readonly Ink[];
  /** Where neither text nor leader may go: other views, on which it would seem to be theirs. */
  readonly outOf?: readonly Box[];
  /** The most wanted first. */
  readonly spots: readonly Spot[];
}

/** One place for a text, and the lines that it needs there. */
export interface Spot {
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Degrees. */
  readonly angle: number;
  readonly inks: readonly Ink[];
}
