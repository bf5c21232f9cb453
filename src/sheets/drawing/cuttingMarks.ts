import type { Point } from '../../../models/curves/segment.ts';
import { arrowhead, HEADING, path, words } from '../paper/inks.ts';
import type { Ink } from '../sheet.ts';

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
export function cuttingMark(edge: Point, outward: Point, look: Point, letter: string): readonly Ink[] {
  const on = (s: number): Point => [edge[0] + s * outward[0], edge[1] + s * outward[1]];
  const end = on(FROM + LENGTH);
  const tail: Point = [end[0] - SHAFT * look[0], end[1] - SHAFT * look[1]];
  const at: Point = [tail[0] - 2.6 * look[0], tail[1] - 2.6 * look[1] - HEADING / 2];
  return [
    path('marks', 'cutting', [on(FROM), end]),
    path('marks', 'detail', [tail, end]),
    arrowhead(end, look, 'marks'),
    words(letter, at, { height: HEADING, anchor: 'middle', bold: true, layer: 'marks' }),
  ];
}
