import type { PartMesh } from '../../../workers/protocol.ts';
import { type HeightGrid, heightGrid } from './heightGrid.ts';
import type { Box } from './meshFigures.ts';

/** The groups of a design whose edges can be told on the part. */
export type LitGroup = 'footprint' | 'underside' | 'top' | 'saddle' | 'pins';

/** mm */
const CELL = 0.35;
/** An edge this near to the outside belongs to the outline. */
const RIM = 0.75;
/** A pin's mouth is wider than its narrowest place by up to this. */
const MOUTH = 2.6;
/** A string channel runs no further than this from its hole. */
const CHANNEL = 11;
/** Beside a slot the top drops by more than this within `BESIDE`; beside a channel by less. */
const SLOT_DROP = 2.6;
const CHANNEL_DROP = 0.12;
const BESIDE = 0.8;
/** The lower outline lies this near to the lowest point, whatever the underside's shape. */
const LOWEST = 1.5;

/**
 * The edges of the mesh that belong to a group of the design (or to a field, by its path, such as `saddle.width`), as xyz
 * pairs, mm. A mesh does not say which edge came from which feature, so each edge is judged by where it lies: on the
 * outline, about a hole through the part, beside a deep drop, or elsewhere on the top.
 */
export function litEdges(mesh: PartMesh, box: Box, path: string): Float32Array {
  const group = path.split('.')[0] as LitGroup;
  const { edges } = mesh;
  const grid = heightGrid(mesh.positions, mesh.triangles, box, CELL, 2);
  const { outside, hole } = distances(grid, box[2]);
  const lit: number[] = [];
  for (let i = 0; i + 5 < edges.length; i += 6) {
    const middle = [0, 1, 2].map((k) => ((edges[i + k] as number) + (edges[i + k + 3] as number)) / 2);
    const [x, y, z] = middle as [number, number, number];
    const column = Math.floor((x - grid.xMin) / CELL);
    const row = Math.floor((y - grid.yMin) / CELL);
    const here = row * grid.columns + column;
    const toHole = hole[here] as number;
    const onOutline = (outside[here] as number) < RIM;
    const drop = dropAt(grid, column, row, box[2]);
    const belongs = {
      footprint: onOutline,
      underside: onOutline && z < box[2] + LOWEST,
      pins: toHole < MOUTH || (!onOutline && toHole < CHANNEL && drop > CHANNEL_DROP && drop < SLOT_DROP),
      saddle: !onOutline && toHole >= MOUTH && drop >= SLOT_DROP,
      top: !onOutline && toHole >= MOUTH && drop < SLOT_DROP && (toHole >= CHANNEL || drop <= CHANNEL_DROP),
    } satisfies Record<LitGroup, boolean>;
    if (belongs[group]) for (let k = 0; k < 6; k++) lit.push(edges[i + k] as number);
  }
  return new Float32Array(lit);
}

/** Highest less lowest wood within `BESIDE` of a cell, mm. */
function dropAt({ top, columns, rows }: HeightGrid, column: number, row: number, lowest: number): number {
  const radius = Math.round(BESIDE / CELL);
  let low = Infinity;
  let high = -Infinity;
  for (let j = Math.max(0, row - radius); j <= Math.min(rows - 1, row + radius); j++) {
    for (let i = Math.max(0, column - radius); i <= Math.min(columns - 1, column + radius); i++) {
      const z = top[j * columns + i] as number;
      if (z < lowest) continue;
      if (z < low) low = z;
      if (z > high) high = z;
    }
  }
  return high - low;
}

/** From each cell, the distance to the outside of the part and to the nearest hole through it, mm. */
function distances({ top, columns, rows }: HeightGrid, lowest: number) {
  const outside = new Float32Array(top.length).fill(1e6);
  const hole = new Float32Array(top.length).fill(1e6);
  const waiting = [0];
  outside[0] = 0;
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    const column = cell % columns;
    for (const next of [
      column > 0 ? cell - 1 : -1,
      column < columns - 1 ? cell + 1 : -1,
      cell - columns,
      cell + columns,
    ]) {
      if (next < 0 || next >= top.length || outside[next] === 0 || (top[next] as number) >= lowest) continue;
      outside[next] = 0;
      waiting.push(next);
    }
  }
  top.forEach((z, cell) => {
    if (z < lowest && outside[cell] !== 0) hole[cell] = 0;
  });
  spread(outside, columns, rows);
  spread(hole, columns, rows);
  return { outside, hole };
}

/** Fills in the distance to the nearest zero, by two sweeps over straight and slanting neighbours (within 8 %). */
function spread(distance: Float32Array, columns: number, rows: number) {
  const slant = CELL * Math.SQRT2;
  const relax = (column: number, row: number, step: 1 | -1) => {
    const here = row * columns + column;
    const from = (i: number, j: number, length: number) => {
      if (i < 0 || i >= columns || j < 0 || j >= rows) return;
      const via = (distance[j * columns + i] as number) + length;
      if (via < (distance[here] as number)) distance[here] = via;
    };
    from(column - step, row, CELL);
    from(column, row - step, CELL);
    from(column - step, row - step, slant);
    from(column + step, row - step, slant);
  };
  for (let row = 0; row < rows; row++) for (let i = 0; i < columns; i++) relax(i, row, 1);
  for (let row = rows - 1; row >= 0; row--) for (let i = columns - 1; i >= 0; i--) relax(i, row, -1);
}
