import type { Vec3 } from './vec3.ts';

/** A closed mesh as the mesh kernel takes it: xyz and unit normal of each vertex, and which vertices are one point. */
export interface ClosedMesh {
  /** Six numbers a vertex. */
  readonly vertices: Float32Array;
  readonly triangles: Uint32Array;
  readonly mergeFrom: Uint32Array;
  readonly mergeTo: Uint32Array;
}

/** Gathers triangles between points. A point that has several normals becomes as many vertices, marked as one point. */
export class MeshBuilder {
  private readonly points: Vec3[] = [];
  /** The vertices of each point. */
  private readonly corners: number[][] = [];
  private readonly vertices: number[] = [];
  private readonly triangles: number[] = [];
  private readonly merges: number[] = [];
  private readonly facing: 1 | -1;

  /** `facing` −1 makes a tool: its normals are those of the wood that it leaves, which point into it. */
  constructor(facing: 1 | -1) {
    this.facing = facing;
  }

  /** A new point; two of the same place are not joined. Gives its number. */
  point(p: Vec3): number {
    this.corners.push([]);
    return this.points.push(p) - 1;
  }

  place(point: number): Vec3 {
    return this.points[point] as Vec3;
  }

  /** A triangle, counter-clockwise seen from outside, with the outward normal at each point. */
  triangle(a: number, b: number, c: number, na: Vec3, nb: Vec3, nc: Vec3): void {
    this.triangles.push(this.corner(a, na), this.corner(b, nb), this.corner(c, nc));
  }

  /** A triangle that is flat. */
  facet(a: number, b: number, c: number): void {
    const [p, q, r] = [this.place(a), this.place(b), this.place(c)];
    const n = cross(
      [q[0] - p[0], q[1] - p[1], q[2] - p[2]],
      [r[0] - p[0], r[1] - p[1], r[2] - p[2]],
    );
    this.triangle(a, b, c, n, n, n);
  }

  finish(): ClosedMesh {
    return {
      vertices: new Float32Array(this.vertices),
      triangles: new Uint32Array(this.triangles),
      mergeFrom: new Uint32Array(this.merges.filter((_, i) => i % 2 === 0)),
      mergeTo: new Uint32Array(this.merges.filter((_, i) => i % 2 === 1)),
    };
  }

  private corner(point: number, normal: Vec3): number {
    const known = this.corners[point] as number[];
    const [x, y, z] = [this.facing * normal[0], this.facing * normal[1], this.facing * normal[2]];
    for (const v of known) {
      const [vx, vy, vz] = [this.vertices[6 * v + 3], this.vertices[6 * v + 4], this.vertices[6 * v + 5]] as [number, number, number];
      if (Math.abs(vx - x) + Math.abs(vy - y) + Math.abs(vz - z) < SAME) return v;
    }
    const [px, py, pz] = this.place(point);
    const made = this.vertices.push(px, py, pz, x, y, z) / 6 - 1;
    const first = known[0];
    if (first !== undefined) this.merges.push(made, first);
    known.push(made);
    return made;
  }
}

/** Normals that differ by less are one: rounding errors of a smooth joint. */
const SAME = 1e-6;

function cross(a: Vec3, b: Vec3): Vec3 {
  const n: Vec3 = [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
  const length = Math.hypot(...n);
  return [n[0] / length, n[1] / length, n[2] / length];
}
