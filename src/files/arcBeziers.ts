import { type Arc, directionAt, type Point, pointAt, sweepOf } from '../../models/curves/segment.ts';

/** Farthest that a cubic may stray from the arc it stands for, mm: a tenth of what any printer can show. */
const STRAY = 1e-4;

/** Two control points and an end: a cubic that begins where the one before ended. */
export type Cubic = readonly [Point, Point, Point];

/**
 * An arc as cubics, for formats that know no arcs: they touch it at their ends and lie within `STRAY` of it between.
 *
 * A cubic over a sweep θ strays by r·2/27·sin⁶(θ/4)/cos²(θ/4) (from memory; 2.7e-4 r for a quarter turn), which is
 * r·2/27·(θ/4)⁶ within 1 % up to a quarter turn.
 */
export function arcBeziers(a: Arc): readonly Cubic[] {
  const sweep = sweepOf(a);
  const most = Math.min(Math.PI / 2, 4 * ((13 * STRAY) / a.radius) ** (1 / 6));
  const count = Math.ceil(sweep / most);
  const step = sweep / count;
  const reach = (4 / 3) * Math.tan(step / 4) * a.radius;
  return Array.from({ length: count }, (_, i) => {
    const [start, end] = [i / count, (i + 1) / count];
    const [p, q] = [i === 0 ? a.from : pointAt(a, start), i === count - 1 ? a.to : pointAt(a, end)];
    const [d, e] = [directionAt(a, start), directionAt(a, end)];
    return [[p[0] + reach * d[0], p[1] + reach * d[1]], [q[0] - reach * e[0], q[1] - reach * e[1]], q];
  });
}
