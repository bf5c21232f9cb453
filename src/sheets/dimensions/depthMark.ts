import type { Point } from '../../../models/curves/segment.ts';
import { ARROW, arrowhead, path, TEXT } from '../paper/inks.ts';
import type { Typeface } from '../sheet.ts';
import type { Draft, Spot } from './draft.ts';
import { OVER } from './linear.ts';

/** How far over the notch the text's shelf may stand, mm. */
const HEIGHTS = [5, 7, 9, 11, 13, 16] as const;

/** The depth of a notch: arrows inside it, however shallow, and the text on a shelf over it. Places on paper, mm. */
export function depthMark(label: string, floor: Point, rim: Point, typeface: Typeface): Draft {
  const head = Math.min(ARROW, 0.45 * (rim[1] - floor[1]));
  const width = typeface.width(label, TEXT);
  return {
    label,
    inks: [
      path('dimensions', 'detail', [floor, rim]),
      arrowhead(floor, [0, -1], 'dimensions', head),
      arrowhead(rim, [0, 1], 'dimensions', head),
    ],
    spots: HEIGHTS.flatMap((height) =>
      ([1, -1] as const).map((side): Spot => {
        const elbow: Point = [rim[0], rim[1] + height];
        return {
          at: [elbow[0] + side, elbow[1] + OVER],
          anchor: side > 0 ? 'start' : 'end',
          angle: 0,
          inks: [path('dimensions', 'detail', [rim, elbow, [elbow[0] + side * (width + 1), elbow[1]]])],
        };
      }),
    ),
  };
}
