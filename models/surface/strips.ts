import type { Point } from '../curves/segment.ts';
import type { Interval, Intervals } from './interval.ts';

/** Where a walk stops: what stands there seen from before it and from after it. */
interface Stop {
  readonly t: number;
  readonly before: Intervals;
  after: Intervals;
}

/** Shorter than this a step in t is a wall, mm. */
const WALL = 1e-8;

/**
 * Outlines of the region that stands over t, as closed polygons with its inside on their left: outer ones
 * counter-clockwise, holes clockwise. Walks from stop to stop, halving each step until straight sides stray at most
 * `deviation` mm; a change that no halving smooths is a wall.
 *
 * @param rowAt the region over t as stretches
 * @param stops where to look at least, rising, the first and last outside or at the ends of the region
 */
export function outlines(
  rowAt: (t: number) => Intervals,
  stops: readonly number[],
  deviation: number,
): readonly (readonly Point[])[] {
  return loops(walk(rowAt, stops, deviation));
}

function walk(rowAt: (t: number) => Intervals, stops: readonly number[], deviation: number): readonly Stop[] {
  const first = stops[0] as number;
  const start = rowAt(first);
  const found: Stop[] = [{ t: first, before: [], after: start }];

  const step = (from: number, left: Intervals, to: number, right: Intervals): void => {
    if (to - from < WALL) {
      (found[found.length - 1] as Stop).after = right;
      return;
    }
    if (left.length === right.length && straight(rowAt, from, left, to, right, deviation)) {
      found.push({ t: to, before: right, after: right });
      return;
    }
    const middle = (from + to) / 2;
    const row = rowAt(middle);
    step(from, left, middle, row);
    step(middle, row, to, right);
  };

  let [t, row] = [first, start];
  for (const to of stops.slice(1)) {
    const next = rowAt(to);
    step(t, row, to, next);
    [t, row] = [to, next];
  }
  (found[found.length - 1] as Stop).after = [];
  return found;
}

/** Whether straight sides between two rows stay within `deviation` of the rows between them. */
function straight(
  rowAt: (t: number) => Intervals,
  from: number,
  left: Intervals,
  to: number,
  right: Intervals,
  deviation: number,
): boolean {
  return [0.5, 0.25, 0.75].every((share) => {
    const row = rowAt(from + share * (to - from));
    return (
      row.length === left.length &&
      row.every((stretch, i) =>
        stretch.every((z, end) => {
          const [a, b] = [(left[i] as Interval)[end] as number, (right[i] as Interval)[end] as number];
          const off = Math.abs(z - a - share * (b - a));
          return off * (to - from) <= deviation * Math.hypot(to - from, b - a);
        }),
      )
    );
  });
}

interface Side {
  readonly from: string;
  readonly to: string;
  readonly point: Point;
}

/** Links the sides of all strips, and the walls between them, head to tail. */
function loops(stops: readonly Stop[]): readonly (readonly Point[])[] {
  const waiting = new Map<string, Side[]>();
  const add = (i: number, z: number, j: number, toZ: number) => {
    const side: Side = { from: `${i} ${z}`, to: `${j} ${toZ}`, point: [(stops[i] as Stop).t, z] };
    const others = waiting.get(side.from);
    if (others) others.push(side);
    else waiting.set(side.from, [side]);
  };
  stops.forEach((stop, i) => {
    for (const [low, high, up] of walls(stop.before, stop.after)) {
      if (up) add(i, low, i, high);
      else add(i, high, i, low);
    }
    const next = stops[i + 1];
    if (!next) return;
    stop.after.forEach(([low, high], k) => {
      const [nextLow, nextHigh] = next.before[k] as Interval;
      add(i, low, i + 1, nextLow);
      add(i + 1, nextHigh, i, high);
    });
  });

  const out: Point[][] = [];
  for (const sides of waiting.values()) {
    for (let side = sides.pop(); side; side = sides.pop()) {
      const points: Point[] = [];
      for (let s: Side | undefined = side; s; s = waiting.get(s.to)?.pop()) points.push(s.point);
      const tidy = withoutIdle(points);
      if (tidy.length > 2) out.push(tidy);
    }
  }
  return out;
}

/** Stretches where wood stands on one side only: [low, high, whether its outline goes up there]. */
function walls(before: Intervals, after: Intervals): readonly (readonly [number, number, boolean])[] {
  if (before === after) return [];
  const levels = [...new Set([...before, ...after].flat())].sort((a, b) => a - b);
  const covers = (row: Intervals, z: number) => row.some(([low, high]) => z > low && z < high);
  return levels.slice(1).flatMap((high, i) => {
    const low = levels[i] as number;
    const middle = (low + high) / 2;
    const [was, is] = [covers(before, middle), covers(after, middle)];
    return was === is ? [] : [[low, high, was] as const];
  });
}

/** The polygon without points on top of each other or in the middle of a straight, to a millionth of a millimetre. */
function withoutIdle(points: readonly Point[]): readonly Point[] {
  const far = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);
  const apart = points.filter((p, i) => far(p, points[(i + 1) % points.length] as Point) > 1e-6);
  return apart.filter((p, i) => {
    const a = apart[(i + apart.length - 1) % apart.length] as Point;
    const b = apart[(i + 1) % apart.length] as Point;
    const twice = (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
    return Math.abs(twice) > 1e-6 * far(a, b);
  });
}
