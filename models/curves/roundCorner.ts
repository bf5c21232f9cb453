import {
  type Arc,
  arc,
  distance,
  LEAST_PIECE,
  type Line,
  lengthOf,
  nearestOn,
  type Point,
  type Segment,
} from './segment.ts';

/** A corner taken off: the two pieces cut back to where the arc touches them, and the arc. */
export interface RoundedCorner {
  readonly before: Segment;
  readonly corner: Arc;
  readonly after: Segment;
}

/**
 * Rounds the left-turning corner where `before` ends and `after` begins with a tangent arc of `radius` mm on the left
 * of both. Gives undefined when the arc doesn't fit on the two pieces.
 */
export function roundCorner(before: Segment, after: Segment, radius: number): RoundedCorner | undefined {
  const centres = meet(offsetLeft(before, radius), offsetLeft(after, radius));
  let best: RoundedCorner | undefined;
  let nearest = Number.POSITIVE_INFINITY;
  for (const centre of centres) {
    const first = touch(before, centre, radius);
    const last = touch(after, centre, radius);
    const away = distance(centre, before.to);
    if (!first || !last || away >= nearest) continue;
    nearest = away;
    best = {
      before: { ...before, to: first },
      corner: arc(first, last, centre, 1),
      after: { ...after, from: last },
    };
  }
  const pieces = best && [best.before, best.corner, best.after];
  return pieces?.every((s) => lengthOf(s) >= LEAST_PIECE) ? best : undefined;
}

type Locus = Line | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number };

/** All points at distance `d` to the left of a segment carried on without end. */
function offsetLeft(s: Segment, d: number): Locus {
  if (s.kind === 'arc') return { kind: 'circle', centre: s.centre, radius: s.radius - s.turn * d };
  const l = distance(s.from, s.to);
  const n: Point = [(-(s.to[1] - s.from[1]) / l) * d, ((s.to[0] - s.from[0]) / l) * d];
  return { kind: 'line', from: [s.from[0] + n[0], s.from[1] + n[1]], to: [s.to[0] + n[0], s.to[1] + n[1]] };
}

function meet(a: Locus, b: Locus): readonly Point[] {
  if (a.kind === 'line' && b.kind === 'line') return meetLines(a, b);
  if (a.kind === 'line' && b.kind === 'circle') return meetLineCircle(a, b.centre, b.radius);
  if (a.kind === 'circle' && b.kind === 'line') return meetLineCircle(b, a.centre, a.radius);
  if (a.kind === 'circle' && b.kind === 'circle') return meetCircles(a.centre, a.radius, b.centre, b.radius);
  return [];
}

function meetLines(a: Line, b: Line): readonly Point[] {
  const [ux, uy] = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
  const [vx, vy] = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
  const cross = ux * vy - uy * vx;
  if (Math.abs(cross) < 1e-12) return [];
  const t = ((b.from[0] - a.from[0]) * vy - (b.from[1] - a.from[1]) * vx) / cross;
  return [[a.from[0] + t * ux, a.from[1] + t * uy]];
}

function meetLineCircle(l: Line, centre: Point, radius: number): readonly Point[] {
  const length = distance(l.from, l.to);
  const [ux, uy] = [(l.to[0] - l.from[0]) / length, (l.to[1] - l.from[1]) / length];
  const along = (centre[0] - l.from[0]) * ux + (centre[1] - l.from[1]) * uy;
  const foot: Point = [l.from[0] + along * ux, l.from[1] + along * uy];
  const half = radius * radius - distance(foot, centre) ** 2;
  if (radius <= 0 || half < 0) return [];
  const h = Math.sqrt(half);
  return [
    [foot[0] - h * ux, foot[1] - h * uy],
    [foot[0] + h * ux, foot[1] + h * uy],
  ];
}

/** The two points where circles cross, or none. */
export function meetCircles(c1: Point, r1: number, c2: Point, r2: number): readonly Point[] {
  const d = distance(c1, c2);
  if (d < 1e-12 || r1 <= 0 || r2 <= 0) return [];
  const a = (r1 * r1 - r2 * r2 + d * d) / (2 * d);
  const half = r1 * r1 - a * a;
  if (half < 0) return [];
  const h = Math.sqrt(half);
  const [ux, uy] = [(c2[0] - c1[0]) / d, (c2[1] - c1[1]) / d];
  const foot: Point = [c1[0] + a * ux, c1[1] + a * uy];
  return [
    [foot[0] - h * uy, foot[1] + h * ux],
    [foot[0] + h * uy, foot[1] - h * ux],
  ];
}

/** Where a circle round `centre` touches a segment, if that lies on the segment and not beyond its ends. */
function touch(s: Segment, centre: Point, radius: number): Point | undefined {
  const near = nearestOn(s, centre);
  const onIt = Math.abs(near.distance - radius) < 1e-7;
  return onIt && near.t > 1e-9 && near.t < 1 - 1e-9 ? near.point : undefined;
}
