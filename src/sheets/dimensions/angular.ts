import { arc, type Point } from '../../../models/curves/segment.ts';
import { ARROW, arrowhead, path, stroke, TEXT } from '../paper/inks.ts';
import type { Typeface } from '../sheet.ts';
import type { Draft, Spot } from './draft.ts';
import { leader } from './leader.ts';
import { OVER } from './over.ts';
import { slants } from './slants.ts';

/** An angle on paper: two lines that start from one place. Radians, counter-clockwise. */
export interface Angular {
  readonly label: string;
  readonly corner: Point;
  readonly from: number;
  readonly to: number;
  /** Of the dimension's arc, mm. */
  readonly radius: number;
  /** Distances from the corner at which extension lines begin, for the first and the second line; none if undefined. */
  readonly extend: readonly [number | undefined, number | undefined];
}

/** An angle's dimension: its arc, and places for its text beyond the arc or within it. */
export function angular(d: Angular, typeface: Typeface): Draft {
  const [low, high] = d.from <= d.to ? [d.from, d.to] : [d.to, d.from];
  const at = (angle: number, radius = d.radius): Point => [
    d.corner[0] + radius * Math.cos(angle),
    d.corner[1] + radius * Math.sin(angle),
  ];
  const span = d.radius * (high - low);
  const outside = span < 2 * ARROW + 1;
  const tail = outside ? (2 * ARROW) / d.radius : 0;
  const tangent = (angle: number, way: 1 | -1): Point => [-way * Math.sin(angle), way * Math.cos(angle)];
  // an arrowhead is straight: its back lies on the arc if it is turned by half of what it spans
  const turn = ARROW / (2 * d.radius);
  const heads = outside
    ? [arrowhead(at(low), tangent(low - turn, 1)), arrowhead(at(high), tangent(high + turn, -1))]
    : [arrowhead(at(low), tangent(low + turn, -1)), arrowhead(at(high), tangent(high - turn, 1))];
  const lines = [d.from, d.to].flatMap((angle, i) => {
    const begin = d.extend[i as 0 | 1];
    return begin === undefined
      ? []
      : [path('dimensions', 'detail', [at(angle, begin), at(angle, d.radius + 1.5)])];
  });
  const width = typeface.width(d.label, TEXT);
  const middle = (low + high) / 2;
  const side = Math.cos(middle) < 0 ? -1 : 1;
  const spots = [0, 3, -3, 6, -6, 10, -10].flatMap((up): Spot[] => {
    const [x, y] = at(middle);
    const spot = (way: 1 | -1, gap: number): Spot => ({
      at: [x + way * gap, y - TEXT / 2 + up],
      anchor: way > 0 ? 'start' : 'end',
      angle: 0,
      inks: [],
    });
    return [spot(side, 2), spot(side === 1 ? -1 : 1, 2), spot(side, 5), spot(side, 4 + width / 2)];
  });
  return {
    label: d.label,
    inks: [
      ...lines,
      stroke('dimensions', 'detail', [arc(at(low - tail), at(high + tail), d.corner, 1)]),
      ...heads,
    ],
    spots: [
      ...spots,
      { at: [at(middle)[0], at(high + tail)[1] + OVER], anchor: 'middle', angle: 0, inks: [] },
      // where the arc has no room beside it, farther off on a leader
      ...leader(d.label, slants(at(middle)), typeface).spots,
    ],
  };
}
