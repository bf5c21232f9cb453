import type { Point } from '../../../models/curves/segment.ts';
import { arrowhead, path, TEXT } from '../paper/inks.ts';
import type { Typeface } from '../sheet.ts';
import type { Draft, Spot } from './draft.ts';
import { OVER } from './over.ts';

/** Where a leader may point, and which way (unit vector) it comes away from there. On paper, mm. */
export interface Pointing {
  readonly tip: Point;
  readonly way: Point;
}

const LENGTHS = [6, 8, 10, 12.5, 15, 18, 21, 25, 30, 36] as const;

/** A text on a shelf, with a leader to what it says: the shortest that is free, among the places it may point at. */
export function leader(label: string, pointings: readonly Pointing[], typeface: Typeface): Draft {
  const width = typeface.width(label, TEXT);
  const spots = LENGTHS.flatMap((length) =>
    pointings.flatMap(({ tip, way }) => {
      const elbow: Point = [tip[0] + length * way[0], tip[1] + length * way[1]];
      // a shelf goes on the way the leader leans: the other way it would run back over its own text
      const sides = Math.abs(way[0]) > 0.02 ? [Math.sign(way[0])] : [1, -1];
      return sides.map((side): Spot => {
        const end: Point = [elbow[0] + side * (width + 1), elbow[1]];
        return {
          at: [elbow[0] + side, elbow[1] + OVER],
          anchor: side > 0 ? 'start' : 'end',
          angle: 0,
          inks: [path('dimensions', 'detail', [tip, elbow, end]), arrowhead(tip, [-way[0], -way[1]])],
        };
      });
    }),
  );
  return { label, inks: [], spots };
}
