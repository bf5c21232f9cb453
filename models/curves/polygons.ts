import { distance, type Point } from './segment.ts';

/** A closed polygon, its last corner joined to its first. */
export type Polygon = readonly Point[];

/** Whether a point lies inside a closed polygon. */
export function isWithin(polygon: Polygon, [x, y]: Point): boolean {
  let inside = false;
  for (const [a, b] of sides(polygon)) {
    if (a[1] > y !== b[1] > y && a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]) > x) inside = !inside;
  }
  return inside;
}

/** Distance from a point to the nearest side of a closed polygon, mm, unsigned. */
export function distanceToSides(polygon: Polygon, p: Point): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [a, b] of sides(polygon)) {
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const along = ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy);
    const t = Math.min(1, Math.max(0, along));
    least = Math.min(least, distance(p, [a[0] + t * dx, a[1] + t * dy]));
  }
  return least;
}

/** Least distance between the sides of two polygons that don't cross, mm: it is always at a corner of one of them. */
export function distanceBetween(a: Polygon, b: Polygon): number {
  const toB = a.map((p) => distanceToSides(b, p));
  const toA = b.map((p) => distanceToSides(a, p));
  return Math.min(...toB, ...toA);
}

/** Wood between two separate cuts seen in plan, mm; 0 where they touch, overlap or cross. */
export function gapBetween(a: Polygon, b: Polygon): number {
  if (a.some((p) => isWithin(b, p)) || b.some((p) => isWithin(a, p)) || cross(a, b)) return 0;
  return distanceBetween(a, b);
}

/** Wood between a cut seen in plan and a round one, mm; 0 or less where they touch. */
export function gapToCircle(polygon: Polygon, centre: Point, radius: number): number {
  return isWithin(polygon, centre) ? -radius : distanceToSides(polygon, centre) - radius;
}

/** Whether any two sides of two polygons cross. */
export function cross(a: Polygon, b: Polygon): boolean {
  return sides(a).some(([p, q]) => sides(b).some(([r, s]) => sidesCross(p, q, r, s)));
}

function sidesCross(p: Point, q: Point, r: Point, s: Point): boolean {
  return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;
}

/** Twice the area of a triangle: positive when it turns left. */
function side(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

function sides(polygon: Polygon): readonly (readonly [Point, Point])[] {
  return polygon.map((p, i) => [p, polygon[(i + 1) % polygon.length] as Point] as const);
}
