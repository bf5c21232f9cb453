import type { Point } from './segment.ts';

/** A closed polygon, its last corner joined to its first. */
export type Polygon = readonly Point[];

/** Whether a point lies inside a closed polygon. */
export function isWithin(polygon: Polygon, [x, y]: Point): boolean {
  let inside = false;
  let a = polygon[polygon.length - 1] as Point;
  for (const b of polygon) {
    if (a[1] > y !== b[1] > y && a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]) > x) inside = !inside;
    a = b;
  }
  return inside;
}

/** Distance from a point to the nearest side of a closed polygon, mm, unsigned. */
export function distanceToSides(polygon: Polygon, [x, y]: Point): number {
  let least = Number.POSITIVE_INFINITY;
  let a = polygon[polygon.length - 1] as Point;
  for (const b of polygon) {
    const dx = b[0] - a[0];
    const dy = b[1] - a[1];
    const t = Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy)));
    least = Math.min(least, (x - a[0] - t * dx) ** 2 + (y - a[1] - t * dy) ** 2);
    a = b;
  }
  return Math.sqrt(least);
}

/** Least distance between the sides of two polygons that don't cross, mm: it is always at a corner of one of them. */
export function distanceBetween(a: Polygon, b: Polygon): number {
  let least = Number.POSITIVE_INFINITY;
  for (const p of a) least = Math.min(least, distanceToSides(b, p));
  for (const p of b) least = Math.min(least, distanceToSides(a, p));
  return least;
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

function cross(a: Polygon, b: Polygon): boolean {
  return a.some((p, i) => {
    const q = a[(i + 1) % a.length] as Point;
    return b.some((r, j) => sidesCross(p, q, r, b[(j + 1) % b.length] as Point));
  });
}

/** Whether two straight sides cross inside both. */
function sidesCross(p: Point, q: Point, r: Point, s: Point): boolean {
  return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;
}

/** Twice the area of a triangle: positive when it turns left. */
function side(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}
