import type { Point } from '../../../models/curves/segment.ts';
import type { Draft, Spot } from '../dimensions/draft.ts';
import { arrowhead, HEADING, path } from '../paper/inks.ts';

/** Where a cutting plane's line begins outside the part, how long it is there, and its arrow's length, mm. */
const FROM = 1.5;
const LENGTH = 5;
const SHAFT = 6;

/**
 * One end of a cutting plane: a wide stroke, an arrow that comes to it the way one looks, and the section's letter.
 *
 * @param edge where the plane leaves the part, on paper, mm
 * @param outward unit vector along the plane away from the part
 * @param look unit vector
 */
export function cuttingMark(edge: Point, outward: Point, look: Point, letter: string): Draft {
  const on = (s: number): Point => [edge[0] + s * outward[0], edge[1] + s * outward[1]];
  const end = on(FROM + LENGTH);
  const tail: Point = [end[0] - SHAFT * look[0], end[1] - SHAFT * look[1]];
  const beside = (from: Point, way: Point, by: number): Spot => ({
    at: [from[0] + by * way[0], from[1] + by * way[1] - HEADING / 2],
    anchor: 'middle',
    angle: 0,
    inks: [],
  });
  const back: Point = [-look[0], -look[1]];
  const inward: Point = [-outward[0], -outward[1]];
  const half: Point = [(end[0] + tail[0]) / 2, (end[1] + tail[1]) / 2];
  return {
    label: letter,
    style: { height: HEADING, bold: true, layer: 'marks' },
    inks: [
      path('marks', 'cutting', [on(FROM), end]),
      path('marks', 'detail', [tail, end]),
      arrowhead(end, look, 'marks'),
    ],
    spots: [
      beside(tail, back, 3),
      beside(tail, outward, 3),
      beside(half, outward, 3),
      beside(end, look, 3.2),
      beside(tail, inward, 3),
      beside(tail, back, 5),
      beside(tail, back, 8),
      beside(end, outward, 4),
      beside(end, outward, 7),
    ],
  };
}
