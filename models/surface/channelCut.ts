import type { Channel } from '../curves/curves.ts';
import { rootOfFalling } from '../curves/rim/root.ts';
import type { Point } from '../curves/segment.ts';
import type { Cut } from './cut.ts';
import { between, gauss, panels } from './gauss.ts';
import type { Interval } from './interval.ts';

/**
 * A string channel: a prism whose outline (s, z) is convex.
 *
 * @param radii of the pin hole it leaves, mm: beyond each of them it takes differently much
 */
export function channelCut(channel: Channel, radii: readonly number[]): Cut {
  const [cx, cy] = channel.at;
  const [dx, dy] = channel.direction;
  const half = channel.width / 2;
  const along = channel.outline.map((p) => p[0]);
  const [from, to] = [Math.min(...along), Math.max(...along)];

  const toPart = (s: number, t: number): Point => [cx + s * dx - t * dy, cy + s * dy + t * dx];
  const sides = channel.outline.flatMap((a, i) => {
    const b = channel.outline[(i + 1) % channel.outline.length] as Point;
    if (a[0] === b[0]) return [];
    return { from: Math.min(a[0], b[0]), to: Math.max(a[0], b[0]), a, rise: (b[1] - a[1]) / (b[0] - a[0]) };
  });
  const heights = (s: number): Interval => {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const side of sides) {
      if (s < side.from || s > side.to) continue;
      const z = side.a[1] + (s - side.a[0]) * side.rise;
      if (z < low) low = z;
      if (z > high) high = z;
    }
    return [low, high];
  };
  /** s at which a side of the cut passes a height: a ramp meets a level there, from wall to wall. */
  const levelAt = (z: number): readonly number[] =>
    channel.outline.flatMap((a, i) => {
      const b = channel.outline[(i + 1) % channel.outline.length] as Point;
      return a[1] > z === b[1] > z ? [] : [a[0] + ((z - a[1]) / (b[1] - a[1])) * (b[0] - a[0])];
    });
  const corners = [from, to].flatMap((s) => [toPart(s, -half), toPart(s, half)]);
  const [xs, ys] = [corners.map((c) => c[0]), corners.map((c) => c[1])];

  return {
    box: { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) },
    landmarks: (z) => [
      ...corners,
      toPart((from + to) / 2, 0),
      ...(z === undefined ? [] : levelAt(z).flatMap((s) => [toPart(s, -half), toPart(s, half)])),
    ],
    removed: (x, y) => {
      const s = (x - cx) * dx + (y - cy) * dy;
      const t = (y - cy) * dx - (x - cx) * dy;
      return Math.abs(t) <= half && s >= from && s <= to ? heights(s) : undefined;
    },
    places: ({ top }, visit) => {
      between(-half, half, gauss(8), (t, dt) => {
        // the ramp runs out of the wood where it meets the crown
        const over = (s: number) => top(toPart(s, t)[0]) - heights(s)[0];
        const end = over(from) > 0 ? rootOfFalling(over, from, to - from, to) : from;
        const rims = radii.filter((r) => r > Math.abs(t)).map((r) => Math.sqrt(r * r - t * t));
        const stops = panels(from, end, rims);
        stops.slice(1).forEach((end, k) => {
          between(stops[k] as number, end, gauss(6), (s, ds) => {
            const [x, y] = toPart(s, t);
            visit(x, y, ds * dt);
          });
        });
      });
    },
    turnsAt: (x, { top }) => {
      const run = x - cx;
      // y on the line at x where s or t has a value; a channel along or across the line meets it nowhere or all along
      const atS = (s: number) => (dy === 0 ? [] : [cy + (s - run * dx) / dy]);
      const atT = (t: number) => (dx === 0 ? [] : [cy + (t + run * dy) / dx]);
      const z = top(x);
      const runOut = channel.outline.flatMap((a, i) => {
        const b = channel.outline[(i + 1) % channel.outline.length] as Point;
        return a[1] > z === b[1] > z ? [] : atS(a[0] + ((z - a[1]) / (b[1] - a[1])) * (b[0] - a[0]));
      });
      return [...atS(from), ...atS(to), ...atT(-half), ...atT(half), ...runOut];
    },
  };
}
