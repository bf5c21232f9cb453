import type { MeshBuilder } from './meshBuilder.ts';
import type { Vec3 } from './vec3.ts';

/** One upright of a solid's wall: its points from the floor to the lid, and the wall's normals between them. */
export interface Stake {
  readonly points: readonly Vec3[];
  /** Outward unit normals at the lower and the upper end of each band between two points; none: the wall is flat. */
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
  /** A face that is curved along y: its points on the line across it, from a back stake's to a front stake's. */
  readonly between?: (back: Vec3, front: Vec3) => readonly Vec3[];
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

/** A stake whose points are in the mesh. */
interface Planted {
  readonly stake: Stake;
  /** Numbers of its points. */
  readonly ids: readonly number[];
}

/** Adds a closed shell to a mesh. An end wall has as many stakes as a curved floor has points across. */
export function columnSolid(mesh: MeshBuilder, { columns, floor, lid, frame }: ColumnSolid): void {
  const planted = columns.map((column) =>
    column.map((stake): Planted => ({ stake, ids: stake.points.map((p) => mesh.point(frame.point(p))) })),
  );
  wall(mesh, around(planted), frame);
  const vertex = (cap: Cap, id: number, p: Vec3) => mesh.vertex(id, frame.vector(cap.normal(p)));
  const lids = planted.map((column) =>
    column.map(({ stake, ids }) => vertex(lid, ids.at(-1) as number, stake.points.at(-1) as Vec3)),
  );
  const floors = planted.map((column) => {
    const ends = column.map(({ stake, ids }) => vertex(floor, ids[0] as number, stake.points[0] as Vec3));
    const [back, front] = [column[0]?.stake.points[0], column[1]?.stake.points[0]];
    if (!floor.between || ends.length !== 2 || !back || !front) return ends;
    return [
      ends[0] as number,
      ...floor.between(back, front).map((p) => vertex(floor, mesh.point(frame.point(p)), p)),
      ends[1] as number,
    ];
  });
  for (let i = 1; i < columns.length; i++) {
    strip(lids[i - 1] as number[], lids[i] as number[], (a, b, c) => mesh.triangle(a, b, c));
    strip(floors[i - 1] as number[], floors[i] as number[], (a, b, c) => mesh.triangle(c, b, a));
  }
}

/** All stakes in the order of the wall, counter-clockwise seen from above. */
function around(columns: readonly (readonly Planted[])[]): readonly Planted[] {
  const inner = columns.slice(1, -1);
  const [left, right] = [columns[0] as readonly Planted[], columns[columns.length - 1] as readonly Planted[]];
  return [
    left[0] as Planted,
    ...inner.map((column) => column[0] as Planted),
    ...right,
    ...inner.map((column) => column[1] as Planted).reverse(),
    ...left.slice(1).reverse(),
  ];
}

function wall(mesh: MeshBuilder, loop: readonly Planted[], frame: Frame): void {
  const vertices = loop.map(({ stake, ids }) =>
    stake.bands?.map(
      ([low, high], k) =>
        [
          mesh.vertex(ids[k] as number, frame.vector(low)),
          mesh.vertex(ids[k + 1] as number, frame.vector(high)),
        ] as const,
    ),
  );
  for (let i = 0; i < loop.length; i++) {
    const j = (i + 1) % loop.length;
    const [a, b] = [loop[i] as Planted, loop[j] as Planted];
    for (let k = 0; k + 1 < a.ids.length; k++) {
      const [va, vb] = [vertices[i]?.[k], vertices[j]?.[k]];
      if (va && vb) {
        mesh.triangle(va[0], vb[0], vb[1]);
        mesh.triangle(va[0], vb[1], va[1]);
      } else {
        const [a0, a1, b0, b1] = [a.ids[k], a.ids[k + 1], b.ids[k], b.ids[k + 1]] as Four;
        mesh.facet(a0, b0, b1);
        mesh.facet(a0, b1, a1);
      }
    }
  }
}

type Four = readonly [number, number, number, number];

/** Triangles between two columns of a cap, going up both at the same pace; counter-clockwise seen from above. */
function strip(
  left: readonly number[],
  right: readonly number[],
  add: (a: number, b: number, c: number) => void,
): void {
  const [m, n] = [left.length - 1, right.length - 1];
  let i = 0;
  let j = 0;
  while (i < m || j < n) {
    const [a, b] = [left[i] as number, right[j] as number];
    if (i === m || (j < n && (j + 1) * m <= (i + 1) * n)) add(a, b, right[++j] as number);
    else add(a, b, left[++i] as number);
  }
}
