import type { MeshBuilder } from './meshBuilder.ts';
import type { Vec3 } from './vec3.ts';

/** One upright of a solid's wall: its points from the floor to the lid, and the wall's normals between them. */
export interface Stake {
  readonly points: readonly Vec3[];
  /** Outward normals at the lower and the upper end of each band between two points; none: the bands are flat. */
  readonly bands?: readonly (readonly [Vec3, Vec3])[];
}

/**
 * The stakes at one x, from back to front: two of them, front and back wall; at a solid's left and right end any
 * number, along its end wall, or the one in which front and back meet. They all have the same number of points.
 */
export type Column = readonly Stake[];

/** Floor or lid between the walls. */
export interface Cap {
  /** Outward unit normal at a point. */
  readonly normal: (p: Vec3) => Vec3;
  /** A face that is curved along y: its height over (x, y), and into how many rows it is divided. */
  readonly curved?: { readonly rows: number; readonly z: (x: number, y: number) => number };
}

/** From the frame in which a solid is described to the part's. */
export interface Frame {
  readonly point: (p: Vec3) => Vec3;
  readonly vector: (v: Vec3) => Vec3;
}

/** Columns that stand from left to right, closed by a wall all round, a floor and a lid. */
export interface ColumnSolid {
  readonly columns: readonly Column[];
  readonly floor: Cap;
  readonly lid: Cap;
  readonly frame: Frame;
}

/** Adds a closed shell to a mesh. An end wall must have as many stakes as a curved floor has rows, and one more. */
export function columnSolid(mesh: MeshBuilder, { columns, floor, lid, frame }: ColumnSolid): void {
  const point = (p: Vec3) => mesh.point(frame.point(p));
  const ids = columns.map((column) => column.map((stake) => stake.points.map(point)));
  const top = (ids[0]?.[0]?.length ?? 0) - 1;

  const loop = around(columns);
  for (let i = 0; i < loop.length; i++) {
    const [a, b] = [loop[i] as Corner, loop[(i + 1) % loop.length] as Corner];
    band(mesh, stakeAt(columns, a), numbersAt(ids, a), stakeAt(columns, b), numbersAt(ids, b), frame);
  }

  const lids = columns.map((column, i) =>
    column.map((stake, j): Knot => {
      const p = stake.points[top] as Vec3;
      return { id: (ids[i]?.[j] as number[])[top] as number, normal: frame.vector(lid.normal(p)) };
    }),
  );
  const floors = columns.map((column, i) => floorKnots(column, ids[i] as number[][]));
  for (let i = 1; i < columns.length; i++) {
    strip(lids[i - 1] as Knot[], lids[i] as Knot[], (a, b, c) => triangle(mesh, a, b, c));
    strip(floors[i - 1] as Knot[], floors[i] as Knot[], (a, b, c) => triangle(mesh, c, b, a));
  }

  function floorKnots(column: Column, numbers: readonly (readonly number[])[]): Knot[] {
    const knot = (id: number, p: Vec3): Knot => ({ id, normal: frame.vector(floor.normal(p)) });
    const ends = column.map((stake, j) => knot(numbers[j]?.[0] as number, stake.points[0] as Vec3));
    const [first, last] = [ends[0] as Knot, ends[1] as Knot];
    if (!floor.curved || ends.length !== 2) return ends;
    const { rows, z } = floor.curved;
    const [p, q] = [column[0]?.points[0] as Vec3, column[1]?.points[0] as Vec3];
    const between = Array.from({ length: rows - 1 }, (_, k) => {
      const t = (k + 1) / rows;
      const [x, y] = [p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])];
      const r: Vec3 = [x, y, z(x, y)];
      return knot(point(r), r);
    });
    return [first, ...between, last];
  }
}

interface Knot {
  readonly id: number;
  readonly normal: Vec3;
}

/** A stake's column and its place there. */
type Corner = readonly [number, number];

const stakeAt = (columns: readonly Column[], [i, j]: Corner) => columns[i]?.[j] as Stake;
const numbersAt = (ids: readonly (readonly (readonly number[])[])[], [i, j]: Corner) =>
  ids[i]?.[j] as readonly number[];

/** All stakes in the order of the wall, counter-clockwise seen from above. */
function around(columns: readonly Column[]): readonly Corner[] {
  const last = columns.length - 1;
  const back = columns.map((_, i): Corner => [i, 0]);
  const right = (columns[last] as Column).map((_, j): Corner => [last, j]).slice(1);
  const front = columns.map((column, i): Corner => [i, column.length - 1]).slice(1, -1);
  const left = (columns[0] as Column).map((_, j): Corner => [0, j]).slice(1);
  return [...back, ...right, ...front.reverse(), ...left.reverse()];
}

function band(
  mesh: MeshBuilder,
  a: Stake,
  from: readonly number[],
  b: Stake,
  to: readonly number[],
  frame: Frame,
): void {
  for (let k = 0; k + 1 < from.length; k++) {
    const [a0, a1, b0, b1] = [from[k], from[k + 1], to[k], to[k + 1]] as [number, number, number, number];
    const [na, nb] = [a.bands?.[k], b.bands?.[k]];
    if (!na || !nb) {
      mesh.facet(a0, b0, b1);
      mesh.facet(a0, b1, a1);
      continue;
    }
    const [la, ua, lb, ub] = [na[0], na[1], nb[0], nb[1]].map(frame.vector) as [Vec3, Vec3, Vec3, Vec3];
    mesh.triangle(a0, b0, b1, la, lb, ub);
    mesh.triangle(a0, b1, a1, la, ub, ua);
  }
}

function triangle(mesh: MeshBuilder, a: Knot, b: Knot, c: Knot): void {
  mesh.triangle(a.id, b.id, c.id, a.normal, b.normal, c.normal);
}

/** Triangles between two columns of a cap, going up both at the same pace; counter-clockwise seen from above. */
function strip(
  left: readonly Knot[],
  right: readonly Knot[],
  add: (a: Knot, b: Knot, c: Knot) => void,
): void {
  const [m, n] = [left.length - 1, right.length - 1];
  let i = 0;
  let j = 0;
  while (i < m || j < n) {
    const [a, b] = [left[i] as Knot, right[j] as Knot];
    if (i === m || (j < n && (j + 1) * m <= (i + 1) * n)) {
      j++;
      add(a, b, right[j] as Knot);
    } else {
      i++;
      add(a, b, left[i] as Knot);
    }
  }
}
