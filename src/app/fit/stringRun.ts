import type { Point } from '../../../models/curves/segment.ts';

/** Two slopes within a billionth are one: the farther point counts. */
const SAME = 1e-9;

/**
 * The taut string behind its crown, (s, z) in mm: from the crown over what wood stands in its way to where it enters its
 * hole, the last of the wood's points. It never lies below the wood.
 */
export function stringRun(crownHeight: number, wood: readonly Point[]): readonly Point[] {
  const run: Point[] = [[0, crownHeight]];
  let rest = wood;
  while (rest.length > 0) {
    const [s, z] = run[run.length - 1] as Point;
    const slopes = rest.map((p) => (p[1] - z) / (p[0] - s));
    const least = Math.max(...slopes);
    const next = slopes.findLastIndex((slope) => slope >= least - SAME);
    run.push(rest[next] as Point);
    rest = rest.slice(next + 1);
  }
  return run;
}

/** A line moved to its left by a distance, corners kept: where a round string's middle runs over what its underside touches. */
export function besides(points: readonly Point[], by: number): readonly Point[] {
  return points.map((p, i): Point => {
    const before = unit(points[i - 1] ?? p, i > 0 ? p : (points[1] ?? p));
    const after = i + 1 < points.length ? unit(p, points[i + 1] as Point) : before;
    const first = i === 0 ? after : before;
    const [nx, nz] = [-(first[1] + after[1]) / 2, (first[0] + after[0]) / 2];
    // the mitre of a corner is longer than the distance itself
    const square = nx * nx + nz * nz;
    return square > 0 ? [p[0] + (by * nx) / square, p[1] + (by * nz) / square] : p;
  });
}

function unit([x0, z0]: Point, [x1, z1]: Point): Point {
  const length = Math.hypot(x1 - x0, z1 - z0);
  return length > 0 ? [(x1 - x0) / length, (z1 - z0) / length] : [0, 0];
}
