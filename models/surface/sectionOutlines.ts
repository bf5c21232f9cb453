import type { Point } from '../curves/segment.ts';
import type { Interval, Intervals } from './interval.ts';
import { tidied } from './tidied.ts';

/** Where a walk stops: what stands there seen from before it and from after it. */
interface Stop {
  readonly t: number;
  readonly before: Intervals;
  after: Intervals;
}

/** A step in t that is shorter than this share of the deviation allowed is a wall. */
const WALL = 1e-3;

/**
 * Outlines of the region that stands over t, as closed polygons with its inside on their left: outer ones
 * counter-clockwise, holes clockwise. Walks from stop to stop, halving each step until straight sides stray at most
 * `deviation` mm; a change that no halving smooths is a wall.
 *
 * @param rowAt the region over t as stretches
 * @param stops where to look at least, rising, the first and last outside or at the ends of the region
 */
export function sectionOutlines(
  rowAt: (t: number) => Intervals,
  stops: readonly number[],
  deviation: number,
): readonly (readonly Point[])[] {
  // a tenth of the deviation is kept for leaving out points that hardly bend the outline
  return loops(walk(rowAt, stops, 0.9 * deviation))
    .map((polygon) => tidied(polygon, 0.1 * deviation))
    .filter((polygon) => polygon.length > 2);
}

function walk(
  region: (t: number) => Intervals,
  stops: readonly number[],
  deviation: number,
): readonly Stop[] {
  // places looked at to judge a step are most of what the next halving asks for
  const seen = new Map<number, Intervals>();
  const rowAt = (t: number): Intervals => {
    const known = seen.get(t);
    if (known) return known;
    const row = region(t);
    seen.set(t, row);
    return row;
  };
  const first = stops[0] as number;
  const start = rowAt(first);
  const found: Stop[] = [{ t: first, before: [], after: start }];

  const step = (from: number, left: Intervals, to: number, right: Intervals): void => {
    if (to - from < WALL * deviation) {
      (found[found.length - 1] as Stop).after = right;
      return;
    }
    if (left.length === right.length && straight(rowAt, from, left, to, right, deviation)) {
      found.push({ t: to, before: right, after: right });
      return;
    }
    const middle = from + 0.5 * (to - from);
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

  const out: (readonly Point[])[] = [];
  for (const sides of waiting.values()) {
    for (let side = sides.pop(); side; side = sides.pop()) {
      const points: Point[] = [];
      for (let s: Side | undefined = side; s; s = waiting.get(s.to)?.pop()) points.push(s.point);
      out.push(points);
    }
  }
  return out;
}

/** Stretches where wood stands on one side only: [low, high, whether its outline goes up there]. */
function walls(before: Intervals, after: Intervals): readonly (readonly [number, number, boolean])[] {
  if (before === after) return [];
  const levels = [...new Set([...before, ...after].flat())].sort((a, b) => a - b);
  const covers = (row: Intervals, from: number, to: number) =>
    row.some(([low, high]) => low <= from && to <= high);
  return levels.slice(1).flatMap((high, i) => {
    const low = levels[i] as number;
    const [was, is] = [covers(before, low, high), covers(after, low, high)];
    return was === is ? [] : [[low, high, was] as const];
  });
}
