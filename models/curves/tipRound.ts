import {
  type Chain,
  distance,
  LEAST_PIECE,
  lengthOf,
  nearestOn,
  type Point,
  type Segment,
} from './segment.ts';

/** The circle that touches both edges of a wing and ends the bridge at x = halfLength. */
export interface TipRound {
  readonly centre: Point;
  readonly radius: number;
  readonly touchBack: Point;
  readonly touchFront: Point;
}

/**
 * The half-round tip: a circle inside the wing, tangent to the last piece of the back edge, to that of the front edge
 * and to the line x = halfLength. Both edges walk toward +x. Newton's method on (radius, y of the centre); undefined
 * when no such circle touches both pieces within their length.
 */
export function tipRound(back: Chain, front: Chain, halfLength: number): TipRound | undefined {
  const b = back[back.length - 1];
  const f = front[front.length - 1];
  if (!b || !f) return undefined;
  let r = Math.abs(f.to[1] - b.to[1]) / 2;
  let y = (f.to[1] + b.to[1]) / 2;
  const gap = (radius: number, yc: number): readonly [number, number] => {
    const c: Point = [halfLength - radius, yc];
    return [inward(b, c, 1) - radius, inward(f, c, -1) - radius];
  };
  for (let i = 0; i < 40; i++) {
    const [g1, g2] = gap(r, y);
    if (Math.hypot(g1, g2) < 1e-12) break;
    const h = 1e-6;
    const [a1, a2] = gap(r + h, y);
    const [b1, b2] = gap(r, y + h);
    const [j11, j21, j12, j22] = [(a1 - g1) / h, (a2 - g2) / h, (b1 - g1) / h, (b2 - g2) / h];
    const det = j11 * j22 - j12 * j21;
    if (Math.abs(det) < 1e-12) return undefined;
    r -= (g1 * j22 - g2 * j12) / det;
    y -= (j11 * g2 - j21 * g1) / det;
  }
  const centre: Point = [halfLength - r, y];
  const [nb, nf] = [nearestOn(b, centre), nearestOn(f, centre)];
  const touches = (s: Segment, n: { t: number; distance: number }) =>
    Math.abs(n.distance - r) < 1e-7 && n.t * lengthOf(s) >= LEAST_PIECE && n.t <= 1 + 1e-12;
  return r > 0 && touches(b, nb) && touches(f, nf)
    ? { centre, radius: r, touchBack: nb.point, touchFront: nf.point }
    : undefined;
}

/** Distance of a point from a segment carried on without end; positive on the left (side 1) or right (side −1). */
function inward(s: Segment, p: Point, side: 1 | -1): number {
  if (s.kind === 'arc') return side * s.turn * (s.radius - distance(p, s.centre));
  const l = distance(s.from, s.to);
  const left = ((s.to[0] - s.from[0]) * (p[1] - s.from[1]) - (s.to[1] - s.from[1]) * (p[0] - s.from[0])) / l;
  return side * left;
}
