/** A point of a plane drawing, mm. In plan (x, y); in elevation (x, z). */
export type Point = readonly [number, number];

/** A straight piece. */
export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/** A piece of a circle of less than a full turn. `turn` is +1 counter-clockwise, −1 clockwise. */
export interface Arc {
  readonly kind: 'arc';
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly radius: number;
  readonly turn: 1 | -1;
}

export type Segment = Line | Arc;

/** Pieces end to end; closed when the last ends where the first begins. */
export type Chain = readonly Segment[];

/** Shortest piece of a curve that is drawn, mm: no tool cuts a shorter one, and it troubles the solid kernel. */
export const LEAST_PIECE = 0.05;

export const line = (from: Point, to: Point): Line => ({ kind: 'line', from, to });

export const arc = (from: Point, to: Point, centre: Point, turn: 1 | -1): Arc => ({
  kind: 'arc',
  from,
  to,
  centre,
  radius: Math.hypot(from[0] - centre[0], from[1] - centre[1]),
  turn,
});

/** Angle that an arc turns through, radians, positive. */
export function sweepOf(a: Arc): number {
  const start = Math.atan2(a.from[1] - a.centre[1], a.from[0] - a.centre[0]);
  const end = Math.atan2(a.to[1] - a.centre[1], a.to[0] - a.centre[0]);
  const raw = a.turn * (end - start);
  return raw <= 1e-12 ? raw + 2 * Math.PI : raw;
}

export function lengthOf(s: Segment): number {
  return s.kind === 'line' ? distance(s.from, s.to) : s.radius * sweepOf(s);
}

/** The point a share `t` (0 to 1) of the way along. */
export function pointAt(s: Segment, t: number): Point {
  if (s.kind === 'line') {
    return [s.from[0] + t * (s.to[0] - s.from[0]), s.from[1] + t * (s.to[1] - s.from[1])];
  }
  const start = Math.atan2(s.from[1] - s.centre[1], s.from[0] - s.centre[0]);
  const a = start + s.turn * t * sweepOf(s);
  return [s.centre[0] + s.radius * Math.cos(a), s.centre[1] + s.radius * Math.sin(a)];
}

/** Unit direction of travel a share `t` of the way along. */
export function directionAt(s: Segment, t: number): Point {
  if (s.kind === 'line') {
    const l = distance(s.from, s.to);
    return [(s.to[0] - s.from[0]) / l, (s.to[1] - s.from[1]) / l];
  }
  const p = pointAt(s, t);
  return [(-s.turn * (p[1] - s.centre[1])) / s.radius, (s.turn * (p[0] - s.centre[0])) / s.radius];
}

export function reversed(s: Segment): Segment {
  return s.kind === 'line'
    ? { ...s, from: s.to, to: s.from }
    : { ...s, from: s.to, to: s.from, turn: s.turn === 1 ? -1 : 1 };
}

/** Mirror image in the line x = 0. Travel goes the mirrored way. */
export function mirrored(s: Segment): Segment {
  const flip = (p: Point): Point => [-p[0], p[1]];
  return s.kind === 'line'
    ? line(flip(s.from), flip(s.to))
    : { ...s, from: flip(s.from), to: flip(s.to), centre: flip(s.centre), turn: s.turn === 1 ? -1 : 1 };
}

/** The point of a segment nearest to `p`: its share along, itself and its distance. */
export function nearestOn(
  s: Segment,
  p: Point,
): { readonly t: number; readonly point: Point; readonly distance: number } {
  let t: number;
  if (s.kind === 'line') {
    const dx = s.to[0] - s.from[0];
    const dy = s.to[1] - s.from[1];
    t = Math.min(1, Math.max(0, ((p[0] - s.from[0]) * dx + (p[1] - s.from[1]) * dy) / (dx * dx + dy * dy)));
  } else {
    const sweep = sweepOf(s);
    const start = Math.atan2(s.from[1] - s.centre[1], s.from[0] - s.centre[0]);
    const here = Math.atan2(p[1] - s.centre[1], p[0] - s.centre[0]);
    let along = (s.turn * (here - start)) % (2 * Math.PI);
    if (along < 0) along += 2 * Math.PI;
    // past the end: whichever end is nearer round the circle
    t = along <= sweep ? along / sweep : along - sweep < 2 * Math.PI - along ? 1 : 0;
  }
  const point = pointAt(s, t);
  return { t, point, distance: distance(point, p) };
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
