import { edgeBreaks } from './edgeBreaks.ts';
import { facesAlongY, type Place, type Plan } from './plan.ts';
import type { EdgeCut, Spot } from './rim.ts';
import { rootOfFalling } from './root.ts';
import type { Top } from './top.ts';

/** A ruling of the chamfer: the edge's point, and where its normal plane meets top and wall `e` mm from it. */
interface Ruling {
  readonly top: Spot;
  readonly wall: Spot;
  /** The wall's point by its length along the outline. */
  readonly wallAt: number;
}

/**
 * The chamfer that takes `e` mm off top and wall alike: in the plane square to the edge, a straight from the top's
 * point at distance `e` from the edge to the wall's. Over walls facing ±y that is the profile moved in by what is left
 * of `e`.
 */
export function chamfer(e: number, plan: Plan, top: Top): EdgeCut {
  const ruling = (s: number): Ruling => {
    const q = plan.at(s);
    const z = top.height(q.x, 0);
    const rise = top.slope(q.x, 0) * q.dx;
    return { top: onTop(q, z, rise, e, top), ...onWall(s, q, z, rise, e, plan) };
  };

  return {
    reach: e,
    section: 'straight',
    breaks: edgeBreaks(plan, 0, top.joints(0)),
    height: (x, y, near) => {
      const { s, distance } = near;
      if (distance >= e) return top.height(x, 0);
      if (facesAlongY(plan, near, e)) return top.height(x, e - distance);
      const aside = (along: number) => {
        const { top: t, wall: w } = ruling(along);
        return (w[0] - t[0]) * (y - t[1]) - (w[1] - t[1]) * (x - t[0]);
      };
      const { top: t, wall: w } = ruling(rootOfFalling(aside, s, 2 * e, s));
      const [dx, dy] = [w[0] - t[0], w[1] - t[1]];
      const share = ((x - t[0]) * dx + (y - t[1]) * dy) / (dx * dx + dy * dy);
      return share <= 0 ? top.height(x, 0) : t[2] + Math.min(1, share) * (w[2] - t[2]);
    },
    wallAt: (s) => ruling(s).wallAt,
    across: (s) => {
      const { top: t, wall: w } = ruling(s);
      return (share) => [
        t[0] + share * (w[0] - t[0]),
        t[1] + share * (w[1] - t[1]),
        t[2] + share * (w[2] - t[2]),
      ];
    },
  };
}

/** The top's point in the edge's normal plane, `e` from the edge: Newton's method from the tangent plane's answer. */
function onTop(q: Place, z: number, rise: number, e: number, top: Top): Spot {
  const slope = top.slope(q.x, 0);
  // (along, inward) in plan, measured from the edge
  let [along, inward] = [(slope * slope * q.dx * q.dy) / (1 + rise * rise), 1];
  const scale = e / Math.hypot(along, inward, slope * (along * q.dx - inward * q.dy));
  along *= scale;
  inward *= scale;
  for (let step = 0; step < 12; step++) {
    const x = q.x + along * q.dx - inward * q.dy;
    const up = top.height(x, 0) - z;
    const f = along + up * rise;
    const g = along * along + inward * inward + up * up - e * e;
    const k = top.slope(x, 0);
    const [fa, fi] = [1 + k * q.dx * rise, -k * q.dy * rise];
    const [ga, gi] = [2 * (along + up * k * q.dx), 2 * (inward - up * k * q.dy)];
    const det = fa * gi - fi * ga;
    along -= (f * gi - g * fi) / det;
    inward -= (fa * g - ga * f) / det;
    if (Math.abs(f) + Math.abs(g) < 1e-13) break;
  }
  const x = q.x + along * q.dx - inward * q.dy;
  return [x, q.y + along * q.dy + inward * q.dx, top.height(x, 0)];
}

/** The wall's point in the edge's normal plane, `e` from the edge: so far along the outline and so far down. */
function onWall(
  s: number,
  q: Place,
  z: number,
  rise: number,
  e: number,
  plan: Plan,
): Pick<Ruling, 'wall' | 'wallAt'> {
  let down = e / Math.sqrt(1 + rise * rise);
  let along = down * rise;
  let p = plan.at(s + along);
  for (let step = 0; step < 12; step++) {
    const [dx, dy] = [p.x - q.x, p.y - q.y];
    const f = dx * q.dx + dy * q.dy - down * rise;
    const g = dx * dx + dy * dy + down * down - e * e;
    const fa = p.dx * q.dx + p.dy * q.dy;
    const ga = 2 * (dx * p.dx + dy * p.dy);
    const det = fa * 2 * down + rise * ga;
    along -= (f * 2 * down + rise * g) / det;
    down -= (fa * g - ga * f) / det;
    p = plan.at(s + along);
    if (Math.abs(f) + Math.abs(g) < 1e-13) break;
  }
  return { wall: [p.x, p.y, z - down], wallAt: s + along };
}
