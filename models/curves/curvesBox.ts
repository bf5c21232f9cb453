import { polygon } from './chain.ts';
import type { Curves } from './curves.ts';
import { undersideHeight } from './underside.ts';

/** The box that the curves put round the part: [xMin, yMin, zMin, xMax, yMax, zMax], mm. */
export function curvesBox({
  outline,
  profile,
  underside,
}: Curves): readonly [number, number, number, number, number, number] {
  const points = polygon(outline, 0.001);
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  const low = Math.min(...points.map(([x, y]) => undersideHeight(underside, x, y)));
  return [Math.min(...xs), Math.min(...ys), low, Math.max(...xs), Math.max(...ys), profile.thickness];
}
