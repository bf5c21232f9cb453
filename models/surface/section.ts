import type { Point } from '../curves/segment.ts';
import type { Intervals } from './interval.ts';
import { sectionOutlines } from './sectionOutlines.ts';
import type { Surface } from './surface.ts';

/** Where to cut: square to an axis, or upright through two points of the plan. mm */
export type SectionPlane =
  | { readonly across: 'x'; readonly at: number }
  | { readonly across: 'y'; readonly at: number }
  | { readonly across: 'z'; readonly at: number }
  | { readonly across: 'plan'; readonly from: Point; readonly to: Point };

/** One piece of wood in a section. */
export interface SectionPiece {
  /** Counter-clockwise, closed by going back to the first point. */
  readonly outer: readonly Point[];
  /** Clockwise. */
  readonly holes: readonly (readonly Point[])[];
}

/**
 * A section: at x = c in (y, z), at y = c in (x, z), at z = c in (x, y), through two points in (way from the first
 * toward the second, z). mm
 */
export interface Section {
  readonly pieces: readonly SectionPiece[];
  readonly areaMm2: number;
}

/** Farthest that a walk goes without looking, mm: nothing on a bridge is so slim but between landmarks. */
const STRIDE = 1;
/** Landmarks nearer than this are one to a walk that only must not miss anything, mm. */
const FINE = 0.05;

/**
 * The wood in a plane: sides stray at most `deviation` mm from the true section, vertices a thousandth of it.
 * Throws `RangeError` when two points that should make a plane are one.
 */
export function section(surface: Surface, plane: SectionPlane, deviation: number): Section {
  const all = plane.across === 'z' ? level(surface, plane.at, deviation) : upright(surface, plane, deviation);
  const outer = all.filter((p) => signedArea(p) > 0);
  const pieces = outer.map((piece) => ({ outer: piece, holes: [] as (readonly Point[])[] }));
  for (const hole of all.filter((p) => signedArea(p) < 0)) {
    // of pieces within pieces, the smallest round it is the hole's own
    const round = pieces
      .filter((piece) => surrounds(piece.outer, hole))
      .sort((a, b) => signedArea(a.outer) - signedArea(b.outer));
    round[0]?.holes.push(hole);
  }
  return { pieces, areaMm2: all.reduce((sum, p) => sum + signedArea(p), 0) };
}

type Upright = Exclude<SectionPlane, { readonly across: 'z' }>;

function upright(surface: Surface, plane: Upright, deviation: number): readonly (readonly Point[])[] {
  const { origin, along } = lineOf(plane);
  const way = (p: Point) => (p[0] - origin[0]) * along[0] + (p[1] - origin[1]) * along[1];
  const stops = stopsAt(surface.landmarks().map(way));
  const row = (t: number) => surface.columns(origin[0] + t * along[0], origin[1] + t * along[1]);
  return sectionOutlines(row, stops, deviation);
}

/** A plane's trace in plan: where its first coordinate is zero, and its direction. */
function lineOf(plane: Upright): { readonly origin: Point; readonly along: Point } {
  if (plane.across === 'x') return { origin: [plane.at, 0], along: [0, 1] };
  if (plane.across === 'y') return { origin: [0, plane.at], along: [1, 0] };
  const [dx, dy] = [plane.to[0] - plane.from[0], plane.to[1] - plane.from[1]];
  const length = Math.hypot(dx, dy);
  if (!(length > 0)) throw new RangeError('a section needs two different points');
  return { origin: plane.from, along: [dx / length, dy / length] };
}

function level(surface: Surface, z: number, deviation: number): readonly (readonly Point[])[] {
  const landmarks = surface.landmarks(z);
  const ys = stopsAt(
    landmarks.map((p) => p[1]),
    FINE,
  );
  const wood = (x: number, y: number) => surface.columns(x, y).some(([low, high]) => z >= low && z <= high);
  const row = (x: number): Intervals => stretches((y) => wood(x, y), ys, deviation / 1000);
  return sectionOutlines(row, stopsAt(landmarks.map((p) => p[0])), deviation);
}

/** Rising stops that take in all landmarks, no two farther apart than a stride, and one beyond either end. */
function stopsAt(landmarks: readonly number[], apart = 1e-6): readonly number[] {
  const sorted = [...landmarks].sort((a, b) => a - b);
  const ends = [(sorted[0] ?? 0) - STRIDE, ...sorted, (sorted[sorted.length - 1] ?? 0) + STRIDE];
  const out = [ends[0] as number];
  for (const to of ends.slice(1)) {
    const from = out[out.length - 1] as number;
    if (to - from < apart) continue;
    const steps = Math.ceil((to - from) / STRIDE);
    for (let i = 1; i <= steps; i++) out.push(from + ((to - from) * i) / steps);
  }
  return out;
}

/** Where `inside` holds, as stretches whose ends are found by halving to `tolerance` mm. */
function stretches(inside: (y: number) => boolean, stops: readonly number[], tolerance: number): Intervals {
  const out: [number, number][] = [];
  let start: number | undefined;
  let [before, was] = [stops[0] as number, false];
  for (const y of stops) {
    const is = inside(y);
    if (is !== was) {
      let [a, b] = [before, y];
      while (b - a > tolerance) {
        const middle = (a + b) / 2;
        if (inside(middle) === was) a = middle;
        else b = middle;
      }
      if (is) start = b;
      else if (start !== undefined) out.push([start, a]);
    }
    [before, was] = [y, is];
  }
  return out;
}

/** Area enclosed by a polygon, positive when it goes counter-clockwise, mm². */
export function signedArea(polygon: readonly Point[]): number {
  let twice = 0;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length] as Point;
    twice += a[0] * b[1] - a[1] * b[0];
  });
  return twice / 2;
}

/** Whether one polygon lies round another: they may touch at a corner but never cross. */
function surrounds(outer: readonly Point[], inner: readonly Point[]): boolean {
  const votes = inner.filter((p) => {
    let inside = false;
    outer.forEach((a, i) => {
      const b = outer[(i + 1) % outer.length] as Point;
      if (a[1] > p[1] !== b[1] > p[1] && a[0] + ((p[1] - a[1]) / (b[1] - a[1])) * (b[0] - a[0]) > p[0]) {
        inside = !inside;
      }
    });
    return inside;
  });
  return 2 * votes.length > inner.length;
}
