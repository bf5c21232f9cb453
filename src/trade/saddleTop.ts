import { arc, type Chain, type Point } from '../../models/curves/segment.ts';

/** A string over the saddle. */
export interface OverSaddle {
  /** Across the guitar, mm. */
  readonly x: number;
  /** Height of the saddle's crown there, mm, over whatever line the template starts from. */
  readonly height: number;
}

/**
 * The saddle's top in its own plane (along the slot, height), mm, for a 1:1 template: from the saddle's left end to its
 * right, an arc between each string and the next through both crowns, the outermost carried on to the ends. Every arc
 * has the fretboard's radius at the saddle, which a plane turned by the slot's angle cuts as R/cos². Plane geometry;
 * that the top follows the fretboard's radius is common practice.
 *
 * @param radius the fretboard's, carried on to the saddle, mm
 * @param slotAngle degrees
 * @param length of the saddle, mm
 * @throws RangeError for fewer than two strings, two at one place, strings beyond the saddle's ends, and heights that no
 *   arc of this radius joins
 */
export function saddleTop(
  strings: readonly OverSaddle[],
  radius: number,
  slotAngle: number,
  length: number,
): Chain {
  const cos = Math.cos((slotAngle * Math.PI) / 180);
  const points = [...strings].sort((a, b) => a.x - b.x).map(({ x, height }): Point => [x / cos, height]);
  const [first, last] = [points[0], points[points.length - 1]];
  if (!first || !last || points.length < 2) throw new RangeError('a saddle’s top needs two strings or more');
  const half = length / 2;
  if (first[0] < -half || last[0] > half) {
    const need = 2 * Math.max(-first[0], last[0]);
    throw new RangeError(`a saddle of ${length} mm is too short for strings that need ${need} mm of it`);
  }
  const r = radius / cos ** 2;
  return points.slice(1).map((to, i) => {
    const from = points[i] as Point;
    const centre = hill(from, to, r);
    const start = i === 0 ? onHill(centre, r, -half) : from;
    const end = i === points.length - 2 ? onHill(centre, r, half) : to;
    return arc(start, end, centre, -1);
  });
}

/** Greatest height of a saddle's top, mm: at an end, at a string, or at an arc's own top. */
export function greatestHeight(top: Chain): number {
  return Math.max(
    ...top.map((s) => {
      const peak = s.kind === 'arc' && s.from[0] < s.centre[0] && s.centre[0] < s.to[0];
      return peak ? s.centre[1] + s.radius : Math.max(s.from[1], s.to[1]);
    }),
  );
}

/** Centre of the arc of this radius that goes over a hill from one point to the other. */
function hill(from: Point, to: Point, radius: number): Point {
  const [dx, dz] = [to[0] - from[0], to[1] - from[1]];
  const chord = Math.hypot(dx, dz);
  const down = Math.sqrt(radius ** 2 - chord ** 2 / 4);
  const centre: Point = [
    (from[0] + to[0]) / 2 + (down * dz) / chord,
    (from[1] + to[1]) / 2 - (down * dx) / chord,
  ];
  // both ends must lie on the upper half, or the arc would turn under
  const upper = dx > 0 && centre[1] <= Math.min(from[1], to[1]);
  if (!upper) {
    throw new RangeError(`no arc of radius ${radius} mm joins crowns at (${from}) and (${to}) mm`);
  }
  return centre;
}

function onHill(centre: Point, radius: number, u: number): Point {
  const square = radius ** 2 - (u - centre[0]) ** 2;
  if (square < 0)
    throw new RangeError(`an arc of radius ${radius} mm ends before the saddle’s end at ${u} mm`);
  return [u, centre[1] + Math.sqrt(square)];
}
