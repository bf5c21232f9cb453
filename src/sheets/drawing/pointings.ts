import {
  type Chain,
  directionAt,
  mirrored,
  type Point,
  pointAt,
  type Segment,
} from '../../../models/curves/segment.ts';
import type { Pointing } from '../dimensions/leader.ts';
import { onPaper, type View } from '../paper/view.ts';

/**
 * Places on a piece that a leader may point at, and square away from it on the side where `outside` lies.
 *
 * @param outside tells from a place and a way whether that way leaves the part
 */
export function pointings(
  pieces: Chain,
  shares: readonly number[],
  view: View,
  outside: (way: Point, at: Point) => boolean,
): readonly Pointing[] {
  return pieces.flatMap((piece) =>
    shares.flatMap((t) => {
      const at = pointAt(piece, t);
      const [dx, dy] = directionAt(piece, t);
      const way: Point = outside([dy, -dx], at) ? [dy, -dx] : [-dy, dx];
      return slanted(way).map((one) => ({ tip: onPaper(view, at), way: one }));
    }),
  );
}

/** A leader that is level or upright looks like another line of the drawing: it comes at a slant. */
function slanted([x, y]: Point): readonly Point[] {
  const angle = Math.atan2(y, x);
  const turn = (degrees: number): Point => {
    const a = angle + (degrees * Math.PI) / 180;
    return [Math.cos(a), Math.sin(a)];
  };
  const isStraight = Math.min(Math.abs(x), Math.abs(y)) < 0.3;
  return isStraight
    ? [turn(30), turn(-30), turn(50), turn(-50)]
    : [[x, y], turn(20), turn(-20), turn(40), turn(-40)];
}

/** A piece and its mirror image in x = 0. */
export const bothWays = (piece: Segment): Chain => [mirrored(piece), piece];
