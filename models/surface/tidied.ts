import type { Point } from '../curves/segment.ts';

/** The closed polygon with as few of its points as leave every other within `tolerance` mm of its sides. */
export function tidied(polygon: readonly Point[], tolerance: number): readonly Point[] {
  // beginning at a corner that surely stays: the point farthest from the first
  const first = polygon[0];
  if (!first) return [];
  let start = 0;
  polygon.forEach((p, i) => {
    if (far(p, first) > far(polygon[start] as Point, first)) start = i;
  });
  const points = [...polygon.slice(start), ...polygon.slice(0, start), polygon[start] as Point];
  const out: Point[] = [];
  let from = 0;
  while (from < points.length - 1) {
    out.push(points[from] as Point);
    let to = from + 1;
    while (to + 1 < points.length && spans(points, from, to + 1, tolerance)) to++;
    from = to;
  }
  return out;
}

/** Whether all points between two lie near the straight from one to the other. */
function spans(points: readonly Point[], from: number, to: number, tolerance: number): boolean {
  const [a, b] = [points[from] as Point, points[to] as Point];
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  for (let i = from + 1; i < to; i++) {
    const [px, py] = points[i] as Point;
    const along = square === 0 ? 0 : ((px - a[0]) * dx + (py - a[1]) * dy) / square;
    const share = Math.max(0, Math.min(1, along));
    if (Math.hypot(px - a[0] - share * dx, py - a[1] - share * dy) > tolerance) return false;
  }
  return true;
}

const far = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);
