import type { Box } from './meshFigures.ts';

/** The part's top seen from above, on a grid of square cells. */
export interface HeightGrid {
  /** z over the middle of each cell, row by row from yMin, mm; below the box where there is no wood. */
  readonly top: Float32Array;
  readonly columns: number;
  readonly rows: number;
  /** Side of a cell, mm. */
  readonly cell: number;
  /** Corner of the first cell, mm. */
  readonly xMin: number;
  readonly yMin: number;
}

/** Draws a mesh's upward triangles on a grid. `cell` and `margin` (bare ground around the part) in mm. */
export function heightGrid(
  positions: Float32Array,
  triangles: Uint32Array,
  box: Box,
  cell: number,
  margin: number,
): HeightGrid {
  const columns = Math.ceil((box[3] - box[0] + 2 * margin) / cell);
  const rows = Math.ceil((box[4] - box[1] + 2 * margin) / cell);
  const top = new Float32Array(columns * rows).fill(box[2] - 1);
  const grid = { top, columns, rows, cell, xMin: box[0] - margin, yMin: box[1] - margin };
  for (let i = 0; i + 2 < triangles.length; i += 3) {
    const a = triangles[i] as number;
    const b = triangles[i + 1] as number;
    const c = triangles[i + 2] as number;
    raise(grid, positions, 3 * a, 3 * b, 3 * c);
  }
  return grid;
}

/** Raises every cell whose middle lies under the triangle to its height there, if it faces up. */
function raise(grid: HeightGrid, positions: Float32Array, a: number, b: number, c: number) {
  const { top, columns, rows, cell, xMin, yMin } = grid;
  const ax = ((positions[a] as number) - xMin) / cell - 0.5;
  const ay = ((positions[a + 1] as number) - yMin) / cell - 0.5;
  const bx = ((positions[b] as number) - xMin) / cell - 0.5;
  const by = ((positions[b + 1] as number) - yMin) / cell - 0.5;
  const cx = ((positions[c] as number) - xMin) / cell - 0.5;
  const cy = ((positions[c + 1] as number) - yMin) / cell - 0.5;
  const twice = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
  if (twice <= 0) return;
  const az = positions[a + 2] as number;
  const bz = positions[b + 2] as number;
  const cz = positions[c + 2] as number;

  const lastColumn = Math.min(columns - 1, Math.floor(Math.max(ax, bx, cx)));
  const lastRow = Math.min(rows - 1, Math.floor(Math.max(ay, by, cy)));
  for (let j = Math.max(0, Math.ceil(Math.min(ay, by, cy))); j <= lastRow; j++) {
    for (let i = Math.max(0, Math.ceil(Math.min(ax, bx, cx))); i <= lastColumn; i++) {
      const toC = (bx - ax) * (j - ay) - (by - ay) * (i - ax);
      const toA = (cx - bx) * (j - by) - (cy - by) * (i - bx);
      const toB = twice - toC - toA;
      // A hair's breadth over the rim, so that no cell falls between two triangles.
      if (Math.min(toA, toB, toC) < -1e-6 * twice) continue;
      const z = (toA * az + toB * bz + toC * cz) / twice;
      const here = j * columns + i;
      if (z > (top[here] as number)) top[here] = z;
    }
  }
}

/** The ground that no wood covers. */
export interface BareGround {
  /** 1 in each cell outside of the part. */
  readonly outside: Uint8Array;
  /** The holes through it, as circles of their bare area, mm. */
  readonly holes: readonly { readonly x: number; readonly y: number; readonly radius: number }[];
}

/** Finds outside and holes on a grid with a margin. `lowest`: the part's lowest z, mm. */
export function bareGround(
  { top, columns, rows, cell: side, xMin, yMin }: HeightGrid,
  lowest: number,
): BareGround {
  const seen = new Uint8Array(top.length);
  const waiting = new Uint32Array(top.length);
  const enclosed = (first: number) => {
    let [count, sumX, sumY, wait] = [0, 0, 0, 1];
    waiting[0] = first;
    seen[first] = 1;
    const visit = (cell: number) => {
      if (seen[cell] || (top[cell] as number) >= lowest) return;
      seen[cell] = 1;
      waiting[wait++] = cell;
    };
    while (wait > 0) {
      const cell = waiting[--wait] as number;
      const [column, row] = [cell % columns, Math.floor(cell / columns)];
      count++;
      sumX += column + 0.5;
      sumY += row + 0.5;
      if (column > 0) visit(cell - 1);
      if (column < columns - 1) visit(cell + 1);
      if (row > 0) visit(cell - columns);
      if (row < rows - 1) visit(cell + columns);
    }
    const radius = side * Math.sqrt(count / Math.PI);
    return { x: xMin + (side * sumX) / count, y: yMin + (side * sumY) / count, radius };
  };
  // The margin makes the first corner bare, and joins everything outside to it.
  enclosed(0);
  const outside = seen.slice();
  const holes = [];
  for (let cell = 0; cell < top.length; cell++) {
    if (!seen[cell] && (top[cell] as number) < lowest) holes.push(enclosed(cell));
  }
  return { outside, holes };
}
