import { arc, line, type Point, type Segment } from '../curves/segment.ts';
import { ahead, cross, dot, lengthOf, minus, unit, type Vector } from './vectors.ts';

/** A smooth curve in space from t = 0 to 1, mm. */
export type Path = (t: number) => Vector;

/** A straight, or a circle's arc walked counter-clockwise about its axis, in space. */
export type Drawn =
  | { readonly kind: 'line'; readonly from: Vector; readonly to: Vector }
  | {
      readonly kind: 'arc';
      readonly from: Vector;
      readonly to: Vector;
      readonly centre: Vector;
      readonly axis: Vector;
      readonly radius: number;
    };

/** How far samples may lie off a line or circle for a curve to be one, mm: above rounding, far below any tolerance. */
export const SAME = 1e-9;
/** Into how many parts a curve is sampled. It is smooth, so none of them hides a bend that the others don't show. */
const PARTS = 16;
/** Radius beyond which a circle's own rounding would stray, mm. */
const LARGEST = 1e6;

/** The line or circle's arc that a path runs along, one way, however unevenly; undefined when it is neither. */
export function recognised(path: Path): Drawn | undefined {
  const samples = Array.from({ length: PARTS + 1 }, (_, i) => path(i / PARTS));
  const [from, middle, to] = [samples[0], samples[PARTS / 2], samples[PARTS]] as [Vector, Vector, Vector];
  const x = unit(minus(to, from));
  const square = cross(x, minus(middle, from));
  // a straight lies in many planes: any of them will do
  const across: Vector = Math.abs(x[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0];
  const axis = unit(lengthOf(square) < SAME ? cross(x, across) : square);
  const y = cross(axis, x);
  if (!samples.every((p) => Math.abs(dot(minus(p, from), axis)) < SAME)) return undefined;
  const drawn = inPlane(samples.map((p): Point => [dot(minus(p, from), x), dot(minus(p, from), y)]));
  if (!drawn) return undefined;
  if (drawn.kind === 'line') return { kind: 'line', from, to };
  const { centre, radius, turn } = drawn;
  const place = ahead(ahead(from, centre[0], x), centre[1], y);
  return { kind: 'arc', from, to, centre: place, radius, axis: turn === 1 ? axis : minus([0, 0, 0], axis) };
}

function inPlane(samples: readonly Point[]): Segment | undefined {
  return asLine(samples) ?? asArc(samples);
}

function asLine(samples: readonly Point[]): Segment | undefined {
  const [from, to] = [samples[0] as Point, samples[PARTS] as Point];
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length < SAME) return undefined;
  const [dx, dy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const aside = samples.map(([x, y]) => (x - from[0]) * dy - (y - from[1]) * dx);
  const along = samples.map(([x, y]) => (x - from[0]) * dx + (y - from[1]) * dy);
  return aside.every((a) => Math.abs(a) < SAME) && rises(along) ? line(from, to) : undefined;
}

function asArc(samples: readonly Point[]): (Segment & { kind: 'arc' }) | undefined {
  const [from, to] = [samples[0] as Point, samples[PARTS] as Point];
  const centre = centreOf(from, samples[PARTS / 2] as Point, to);
  if (!centre) return undefined;
  const [fx, fy] = [from[0] - centre[0], from[1] - centre[1]];
  const radius = Math.hypot(fx, fy);
  if (radius > LARGEST) return undefined;
  if (!samples.every(([x, y]) => Math.abs(Math.hypot(x - centre[0], y - centre[1]) - radius) < SAME))
    return undefined;
  for (const turn of [1, -1] as const) {
    const angles = samples.map(([x, y], i) => {
      const [rx, ry] = [x - centre[0], y - centre[1]];
      const turned = i === 0 ? 0 : turn * Math.atan2(fx * ry - fy * rx, fx * rx + fy * ry);
      return turned < 0 ? turned + 2 * Math.PI : turned;
    });
    if (rises(angles)) return { ...arc(from, to, centre, turn), kind: 'arc' };
  }
  return undefined;
}

function rises(values: readonly number[]): boolean {
  return values.every((v, i) => i === 0 || v > (values[i - 1] as number));
}

/** The centre of the circle through three points, unless they lie on a line. */
function centreOf(a: Point, b: Point, c: Point): Point | undefined {
  const [bx, by, cx, cy] = [b[0] - a[0], b[1] - a[1], c[0] - a[0], c[1] - a[1]];
  const twice = 2 * (bx * cy - by * cx);
  const [b2, c2] = [bx * bx + by * by, cx * cx + cy * cy];
  const x = (cy * b2 - by * c2) / twice;
  const y = (bx * c2 - cx * b2) / twice;
  return Number.isFinite(x) && Number.isFinite(y) ? [a[0] + x, a[1] + y] : undefined;
}
