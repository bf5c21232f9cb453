import type { Point } from '../../../models/curves/segment.ts';
import type { ViewName } from './view.ts';

export type Side = 'above' | 'below' | 'left' | 'right';

/** Dimensions on one side of a view stand in lanes, the lowest rank nearest to the part; one rank, one lane. */
interface Laned {
  readonly view: ViewName;
  readonly side: Side;
  readonly rank: number;
}

/** A distance between two places of a view, measured along one direction. */
export interface LinearPlace extends Laned {
  readonly kind: 'linear';
  readonly from: Point;
  readonly to: Point;
  /** Direction in which it is measured, radians from the view's first axis. */
  readonly along: number;
  /** How far from its place an extension line begins, mm: clear of a hole, for example. */
  readonly clear?: number;
}

/** The angle at the origin between the first axis and a line that is turned by `angle` from it. */
export interface AnglePlace extends Laned {
  readonly kind: 'angle';
  readonly side: 'left' | 'right';
  /** Radians, counter-clockwise. */
  readonly angle: number;
  /** Distance from the origin at which both lines begin, and that of the part's end, mm. */
  readonly begin: number;
  readonly end: number;
}

/** A radius: a leader that stands on the arc, square to it, and carries its text on a level landing. */
export interface RadiusPlace {
  readonly kind: 'radius';
  readonly view: ViewName;
  /** Where the leader's arrow stands, mm, and the unit vector in which it leaves. */
  readonly at: Point;
  readonly way: Point;
  /** To which side the landing goes. */
  readonly hand: 1 | -1;
  /** Length of the leader, px; or the rank of the lane above the view on which it lands. */
  readonly leg: { readonly px: number } | { readonly rank: number };
}

export type Place = LinearPlace | AnglePlace | RadiusPlace;

/** One dimension of the drawing and the places where it may stand, best first. */
export interface Dimension {
  /** Its field. */
  readonly path: string;
  /** Whether its number is solved: told in brackets (ISO 129), selected by a press, not typed over. */
  readonly solved?: boolean;
  /** As it stands on the drawing, and as it is read out. */
  readonly text: string;
  readonly spoken: string;
  readonly places: readonly Place[];
}
