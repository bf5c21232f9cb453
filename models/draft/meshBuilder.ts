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
  /** The first vertex of each point, −1 while it has none. */
  private readonly first: number[] = [];
  /** The next vertex of the same point, −1 after the last. */
  private readonly next: number[] = [];
  /** Six numbers a vertex. */
  private readonly vertices: number[] = [];
  private readonly triangles: number[] = [];
  private readonly mergeFrom: number[] = [];
  private readonly mergeTo: number[] = [];
  private readonly facing: 1 | -1;

  /** `facing` −1 makes a tool: its normals are those of the wood that it leaves, which point into it. */
  constructor(facing: 1 | -1) {
    this.facing = facing;
  }

  /** A new point; two of the same place are not joined. Gives its number. */
  point(p: Vec3): number {
    this.first.push(-1);
    return this.points.push(p) - 1;
  }

  /** The vertex of a point that has this outward unit normal, the same one for the same normal. Gives its number. */
  vertex(point: number, normal: Vec3): number {
    const x = this.facing * normal[0];
    const y = this.facing * normal[1];
    const z = this.facing * normal[2];
    let last = -1;
    for (let v = this.first[point] as number; v >= 0; v = this.next[v] as number) {
      const dx = (this.vertices[6 * v + 3] as number) - x;
      const dy = (this.vertices[6 * v + 4] as number) - y;
      const dz = (this.vertices[6 * v + 5] as number) - z;
      if (dx * dx + dy * dy + dz * dz < SAME) return v;
      last = v;
    }
    const p = this.points[point] as Vec3;
    const made = this.vertices.push(p[0], p[1], p[2], x, y, z) / 6 - 1;
    this.next.push(-1);
    if (last < 0) {
      this.first[point] = made;
    } else {
      this.next[last] = made;
      this.mergeFrom.push(made);
      this.mergeTo.push(this.first[point] as number);
    }
    return made;
  }

  /** A triangle of three vertices, counter-clockwise seen from outside. */
  triangle(a: number, b: number, c: number): void {
    this.triangles.push(a, b, c);
  }

  /** A flat triangle of three points, counter-clockwise seen from outside. */
  facet(a: number, b: number, c: number): void {
    const normal = facing(this.points[a] as Vec3, this.points[b] as Vec3, this.points[c] as Vec3);
    this.triangle(this.vertex(a, normal), this.vertex(b, normal), this.vertex(c, normal));
  }

  finish(): ClosedMesh {
    return {
      vertices: new Float32Array(this.vertices),
      triangles: new Uint32Array(this.triangles),
      mergeFrom: new Uint32Array(this.mergeFrom),
      mergeTo: new Uint32Array(this.mergeTo),
    };
  }
}

/** Square of the distance up to which unit normals are one: rounding errors where faces join smoothly. */
const SAME = 1e-12;

function facing(a: Vec3, b: Vec3, c: Vec3): Vec3 {
  const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
  const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const length = Math.hypot(x, y, z);
  return [x / length, y / length, z / length];
}
