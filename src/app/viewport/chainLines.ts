import type { Box } from './meshFigures.ts';

/** ISO 128 no. 04: a long dash, a gap, a point, a gap; mm. */
const [DASH, GAP, POINT] = [8, 1.5, 1];
const PERIOD = DASH + 2 * GAP + POINT;
/** How far a centre line runs out beyond the part, mm. */
const BEYOND = 18;

/**
 * The part's two centre lines, along x and y through the origin, as dashes on the plane at height z: xyz pairs, mm. A long
 * dash lies across the origin.
 */
export function chainLines(box: Box, z: number): Float32Array {
  const segments: number[] = [];
  const along = (low: number, high: number, put: (from: number, to: number) => void) => {
    const first = Math.floor((low + DASH / 2) / PERIOD);
    for (let start = first * PERIOD - DASH / 2; start < high; start += PERIOD) {
      const point = start + DASH + GAP;
      for (const [from, to] of [
        [start, start + DASH],
        [point, point + POINT],
      ] as const) {
        if (to > low && from < high) put(Math.max(low, from), Math.min(high, to));
      }
    }
  };
  along(box[0] - BEYOND, box[3] + BEYOND, (from, to) => segments.push(from, 0, z, to, 0, z));
  along(box[1] - BEYOND, box[4] + BEYOND, (from, to) => segments.push(0, from, z, 0, to, z));
  return new Float32Array(segments);
}
