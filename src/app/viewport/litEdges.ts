import type { PartMesh } from '../../../workers/protocol.ts';
import { bareGround, type HeightGrid, heightGrid } from './heightGrid.ts';
import type { Box } from './meshFigures.ts';

/** The groups of a design whose edges can be told on the part. */
export type LitGroup = 'footprint' | 'underside' | 'top' | 'saddle' | 'pins';

/** mm */
const CELL = 0.35;
/** An edge this near to the outside belongs to the outline. */
const RIM = 0.6;
/** A pin's mouth is wider than its narrowest place by up to this. */
const MOUTH = 2.6;
/** A string channel is narrower than its hole, and runs no further from it than this. */
const CHANNEL = 11;
/** It makes for its string, no further aside than this part of its run. */
const ASIDE = 0.3;
/** Beside a slot the top drops by more than this within `BESIDE`; beside a channel by less. */
const SLOT_DROP = 2.6;
const CHANNEL_DROP = 0.12;
const BESIDE = 0.8;
/** The lower outline lies this near to the lowest point, whatever the underside's shape. */
const LOWEST = 1.5;

/** The tip's own edges lie this near to the ends of the bridge. */
const TIP = 4;

/** Edges as xyz pairs, mm: those that light up, and the others. */
export interface SortedEdges {
  readonly lit: Float32Array;
  readonly plain: Float32Array;
}

/**
 * The edges of the mesh that belong to a group of the design (or to a field, by its path, such as `saddle.depth`), and
 * those that don't. A mesh does not say which edge came from which feature, so each edge is judged by where it lies: on the
 * outline, about a hole through the part, beside a deep drop, or elsewhere on the top.
 */
export function litEdges(mesh: PartMesh, box: Box, path: string): SortedEdges {
  const group = path.split('.')[0] as LitGroup;
  const { edges } = mesh;
  const grid = heightGrid(mesh.positions, mesh.triangles, box, CELL, 2);
  const { outside, holes } = bareGround(grid, box[2]);
  const end = Math.max(-box[0], box[3]);
  const lit: number[] = [];
  const plain: number[] = [];
  for (let i = 0; i + 5 < edges.length; i += 6) {
    const [x, y, z] = [0, 1, 2].map((k) => ((edges[i + k] as number) + (edges[i + k + 3] as number)) / 2) as [
      number,
      number,
      number,
    ];
    const { drop, toOutside } = around(grid, outside, box[2], x, y);
    const toHole = Math.min(...holes.map((hole) => Math.hypot(x - hole.x, y - hole.y) - hole.radius));
    const onOutline = toOutside < RIM;
    const inChannel =
      drop > CHANNEL_DROP &&
      drop < SLOT_DROP &&
      toHole < CHANNEL &&
      holes.some((hole) => y > hole.y && Math.abs(x - hole.x) < hole.radius + ASIDE * (y - hole.y));
    const belongs = {
      footprint: onOutline,
      underside: onOutline && z < box[2] + LOWEST,
      pins: toHole < MOUTH || (!onOutline && inChannel),
      saddle: !onOutline && toHole >= MOUTH && drop >= SLOT_DROP,
      top: !onOutline && toHole >= MOUTH && drop < SLOT_DROP && !inChannel,
    } satisfies Record<LitGroup, boolean>;
    const isLit = path === 'top.tip' ? end - Math.abs(x) < TIP : belongs[group];
    (isLit ? lit : plain).push(...edges.subarray(i, i + 6));
  }
  return { lit: new Float32Array(lit), plain: new Float32Array(plain) };
}

/** Highest less lowest wood within `BESIDE` of a place, and how far the outside is, if it is near; mm. */
function around(grid: HeightGrid, outside: Uint8Array, lowest: number, x: number, y: number) {
  const { top, columns, rows, xMin, yMin } = grid;
  const [column, row] = [Math.floor((x - xMin) / CELL), Math.floor((y - yMin) / CELL)];
  const radius = Math.ceil(BESIDE / CELL);
  let [low, high, toOutside] = [Infinity, -Infinity, Infinity];
  for (let j = Math.max(0, row - radius); j <= Math.min(rows - 1, row + radius); j++) {
    for (let i = Math.max(0, column - radius); i <= Math.min(columns - 1, column + radius); i++) {
      const away = Math.hypot(xMin + (i + 0.5) * CELL - x, yMin + (j + 0.5) * CELL - y);
      const z = top[j * columns + i] as number;
      if (outside[j * columns + i]) toOutside = Math.min(toOutside, away - CELL / 2);
      if (z < lowest || away > BESIDE) continue;
      low = Math.min(low, z);
      high = Math.max(high, z);
    }
  }
  return { drop: high - low, toOutside };
}
