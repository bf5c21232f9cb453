import type { Point } from '../../../models/curves/segment.ts';
import { ARROW, arrowhead, path, TEXT } from '../paper/inks.ts';
import type { Typeface } from '../sheet.ts';
import type { Draft, Spot } from './draft.ts';
import { OVER } from './over.ts';

/** How far over the notch the text's shelf may stand, mm. */
const HEIGHTS = [5, 7, 9, 11, 13, 16] as const;

/** Where a depth may be drawn: the notch's floor and its rim over it, on paper, mm. */
export interface DepthPlace {
  readonly floor: Point;
  readonly rim: Point;
}

/** The depth of a notch: arrows inside it, however shallow, and the text on a shelf over it. */
export function depthMark(label: string, places: readonly DepthPlace[], typeface: Typeface): Draft {
  const width = typeface.width(label, TEXT);
  const spots = HEIGHTS.flatMap((height) =>
    places.flatMap(({ floor, rim }) =>
      ([1, -1] as const).map((side): Spot => {
        const elbow: Point = [rim[0], rim[1] + height];
        const head = Math.min(ARROW, 0.45 * (rim[1] - floor[1]));
        return {
          at: [elbow[0] + side, elbow[1] + OVER],
          anchor: side > 0 ? 'start' : 'end',
          angle: 0,
          inks: [
            path('dimensions', 'detail', [floor, elbow, [elbow[0] + side * (width + 1), elbow[1]]]),
            arrowhead(floor, [0, -1], 'dimensions', head),
            arrowhead(rim, [0, 1], 'dimensions', head),
          ],
        };
      }),
    ),
  );
  return { label, inks: [], spots };
}
