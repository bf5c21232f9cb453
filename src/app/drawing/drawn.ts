import type { Point } from '../../../models/curves/segment.ts';
import type { Label } from './label.ts';

/** A dimension as it stands on the sheet, px. */
export interface Drawn {
  readonly lines: readonly (readonly [Point, Point])[];
  /** The bent dimension line of an angle, as the `d` of an SVG path. */
  readonly bow: string | undefined;
  /** Tips of arrowheads, and the unit vectors in which they point. */
  readonly arrows: readonly { readonly tip: Point; readonly way: Point }[];
  readonly label: Label;
}

/** Between shorter ends than this, px, arrowheads stand outside and point in. */
export const ROOM_FOR_ARROWS = 20;
/** How far a dimension line runs on under an outside arrowhead, px. */
export const TAIL = 9;
/** How far from its place an extension line begins, and how far it runs past the dimension line, px. */
export const GAP = 2;
export const PAST = 3;

export const plus = (p: Point, way: Point, by: number): Point => [p[0] + way[0] * by, p[1] + way[1] * by];
