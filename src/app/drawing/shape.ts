import { arc, type Chain, type Point } from '../../../models/curves/segment.ts';
import type { Pose } from './pathOf.ts';
import type { ViewName } from './view.ts';

/** What a line of the drawing is, so that a selected field can light it up. */
export type ShapeName =
  | 'body'
  | 'tips'
  | 'frontCorners'
  | 'backCorners'
  | 'frontEdge'
  | 'backEdge'
  | 'fullDepth'
  | 'sweeps'
  | 'knees'
  | 'topEdge'
  | 'blockEnds'
  | 'slot'
  | 'slotAxis'
  | 'slotWalls'
  | 'slotFloor'
  | 'pinLine'
  | 'drills'
  | 'mouths'
  | 'channels'
  | 'centreLine'
  | 'crown'
  | 'shoulders'
  | 'blends'
  | 'wings'
  | 'tipFaces'
  | 'underside'
  | 'soundboard';

/** Line habits of ISO 128: thick outlines, thin detail, chain lines for centres, dashes for what is hidden. */
export type Pen = 'outline' | 'detail' | 'chain' | 'hidden' | 'none';

/** One line of the drawing, mm in its view's plane. `none` is drawn only when it is lit up: an outline holds it. */
export interface Shape {
  readonly name: ShapeName;
  readonly view: ViewName;
  readonly pen: Pen;
  readonly chain: Chain;
  readonly closed: boolean;
  readonly pose?: Pose;
}

/** A full circle as two half turns: one arc can't end where it begins. */
export function circle([x, y]: Point, radius: number): Chain {
  const [right, left]: readonly [Point, Point] = [
    [x + radius, y],
    [x - radius, y],
  ];
  return [arc(right, left, [x, y], 1), arc(left, right, [x, y], 1)];
}
