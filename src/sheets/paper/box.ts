import type { Point } from '../../../models/curves/segment.ts';

/** A rectangle square to the paper, mm. */
export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** A rectangle that may stand askew: its middle, the unit vector along it, and half its length and height, mm. */
export interface OrientedBox {
  readonly centre: Point;
  readonly along: Point;
  readonly halfLength: number;
  readonly halfHeight: number;
}

export function corners(b: OrientedBox): readonly Point[] {
  const [dx, dy] = b.along;
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([u = 0, v = 0]) => [
    b.centre[0] + u * b.halfLength * dx - v * b.halfHeight * dy,
    b.centre[1] + u * b.halfLength * dy + v * b.halfHeight * dx,
  ]);
}

/** Whether two rectangles overlap: none of their four directions parts them. */
export function overlap(a: OrientedBox, b: OrientedBox): boolean {
  const apart = Math.hypot(a.centre[0] - b.centre[0], a.centre[1] - b.centre[1]);
  if (apart > a.halfLength + a.halfHeight + b.halfLength + b.halfHeight) return false;
  return [a.along, left(a.along), b.along, left(b.along)].every((way) => {
    const [a0, a1] = reach(a, way);
    const [b0, b1] = reach(b, way);
    return a0 < b1 && b0 < a1;
  });
}

/** Whether a straight runs through a rectangle. */
export function runsThrough(box: OrientedBox, from: Point, to: Point): boolean {
  const own = ([x, y]: Point): Point => {
    const [rx, ry] = [x - box.centre[0], y - box.centre[1]];
    const [dx, dy] = box.along;
    return [rx * dx + ry * dy, -rx * dy + ry * dx];
  };
  const [a, b] = [own(from), own(to)];
  let [start, end] = [0, 1];
  const sides = [
    [a[0], b[0] - a[0], box.halfLength],
    [a[1], b[1] - a[1], box.halfHeight],
  ] as const;
  for (const [at, run, half] of sides) {
    if (Math.abs(run) < 1e-12) {
      if (Math.abs(at) >= half) return false;
      continue;
    }
    const [t0, t1] = [(-half - at) / run, (half - at) / run];
    start = Math.max(start, Math.min(t0, t1));
    end = Math.min(end, Math.max(t0, t1));
  }
  return start < end;
}

export function isInside(box: OrientedBox, frame: Box): boolean {
  return corners(box).every(
    ([x, y]) => x >= frame.left && x <= frame.right && y >= frame.bottom && y <= frame.top,
  );
}

const left = ([x, y]: Point): Point => [-y, x];

function reach(box: OrientedBox, [wx, wy]: Point): readonly [number, number] {
  const along = corners(box).map(([x, y]) => x * wx + y * wy);
  return [Math.min(...along), Math.max(...along)];
}
