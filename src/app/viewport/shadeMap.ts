import { bareGround, heightGrid } from './heightGrid.ts';
import type { Box } from './meshFigures.ts';

/**
 * What the light needs to know of the part's surroundings, seen from above on a grid, four bytes a cell:
 *   0 the top's height with slots, channels and holes filled to their lips; 1 the height, blurred (both 0 … 255 from the
 *   box's lowest to its highest point, bare ground being lowest);
 *   2 how much of the ground nearby is covered, close about; 3 the same, far about.
 * A point of the part below the filled height is inside a cut, and below the blurred one in a hollow: it gets less light.
 */
export interface ShadeMap {
  readonly data: Uint8Array;
  readonly columns: number;
  readonly rows: number;
  /** Plan of the whole grid, mm: [xMin, yMin, width, height]. */
  readonly plan: readonly [number, number, number, number];
}

/** mm; fine enough for soft light, and quick enough to be drawn anew at every step of a slider. */
const CELL = 1;
/** mm; openings up to twice this wide are filled: a bevelled pin hole is about 8 mm. */
const FILLED = 5;
/** mm of ground around the part: the far shadow ends within it. */
const MARGIN = 22;

export function shadeMap(positions: Float32Array, triangles: Uint32Array, box: Box): ShadeMap {
  const grid = heightGrid(positions, triangles, box, CELL, MARGIN);
  const { top, columns, rows, xMin, yMin } = grid;
  const [low, high] = [box[2], box[5]];
  const heights = top.map((z) => Math.max(0, z - low) / Math.max(high - low, 1e-6));
  const covered = top.map((z) => (z >= low ? 1 : 0));
  // A bay of the outline is not an opening.
  const { outside } = bareGround(grid, low);
  const filled = close(heights, columns, rows).map((height, cell) => (outside[cell] ? 0 : height));
  const layers = [
    filled,
    blur(heights, columns, rows, 3.5),
    blur(covered, columns, rows, 1.6),
    blur(covered, columns, rows, 6),
  ];
  const data = new Uint8Array(4 * columns * rows);
  layers.forEach((layer, channel) => {
    for (let i = 0; i < layer.length; i++) data[4 * i + channel] = Math.round(255 * (layer[i] as number));
  });
  return { data, columns, rows, plan: [xMin, yMin, columns * CELL, rows * CELL] };
}

/** Three box blurs each way, which together are near a Gaussian of the given standard deviation, mm. */
function blur(values: Float32Array, columns: number, rows: number, deviation: number): Float32Array {
  // Variance of three boxes of width w: (w² − 1) / 4.
  const radius = Math.max(1, Math.round((Math.sqrt(4 * (deviation / CELL) ** 2 + 1) - 1) / 2));
  let from = values;
  for (let pass = 0; pass < 3; pass++) {
    const wide = new Float32Array(from.length);
    for (let j = 0; j < rows; j++) blurLine(from, wide, j * columns, 1, columns, radius);
    const both = new Float32Array(from.length);
    for (let i = 0; i < columns; i++) blurLine(wide, both, i, columns, rows, radius);
    from = both;
  }
  return from;
}

/** One line of a box blur. Beyond the grid there is bare ground. */
function blurLine(
  from: Float32Array,
  to: Float32Array,
  offset: number,
  stride: number,
  count: number,
  radius: number,
) {
  let sum = 0;
  for (let i = 0; i < radius && i < count; i++) sum += from[offset + stride * i] as number;
  for (let i = 0; i < count; i++) {
    if (i + radius < count) sum += from[offset + stride * (i + radius)] as number;
    if (i > radius) sum -= from[offset + stride * (i - radius - 1)] as number;
    // Adding and taking away leaves a rounding below zero.
    to[offset + stride * i] = Math.max(0, sum / (2 * radius + 1));
  }
}

/** Raises every opening narrower than twice `FILLED` to its lips: the highest around, then the lowest of those. */
function close(values: Float32Array, columns: number, rows: number): Float32Array {
  const highest = (from: Float32Array) => spread(spread(from, columns, rows, false), columns, rows, true);
  const lowest = (from: Float32Array) => highest(from.map((value) => -value)).map((value) => -value);
  return lowest(highest(values));
}

/** Each cell's highest neighbour within `FILLED`, along the rows or along the columns. */
function spread(from: Float32Array, columns: number, rows: number, upright: boolean): Float32Array {
  const radius = Math.round(FILLED / CELL);
  const [stride, count] = upright ? [columns, rows] : [1, columns];
  const to = new Float32Array(from.length);
  for (let cell = 0; cell < from.length; cell++) {
    const place = upright ? Math.floor(cell / columns) : cell % columns;
    const last = cell + stride * Math.min(radius, count - 1 - place);
    let best = from[cell] as number;
    for (let other = cell - stride * Math.min(radius, place); other <= last; other += stride) {
      if ((from[other] as number) > best) best = from[other] as number;
    }
    to[cell] = best;
  }
  return to;
}
