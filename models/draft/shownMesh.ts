import type { Mesh } from 'manifold-3d';
import type { PartMesh } from '../mesh/partMesh.ts';

/** Cosine of the least angle between two faces that shows as an edge, 1°. */
const CREASE = Math.cos(Math.PI / 180);

/** A mesh with normals as the screen takes it, with the lines along which its normals break. */
export function shownMesh(mesh: Mesh): PartMesh {
  const { vertProperties: from, numProp, triVerts } = mesh;
  const count = from.length / numProp;
  const positions = new Float32Array(3 * count);
  const normals = new Float32Array(3 * count);
  for (let v = 0; v < count; v++) {
    const at = numProp * v;
    const [nx, ny, nz] = [from[at + 3], from[at + 4], from[at + 5]] as [number, number, number];
    // where a cut divides a triangle its normals were blended, and are a little short
    const length = Math.hypot(nx, ny, nz);
    for (let k = 0; k < 3; k++) {
      positions[3 * v + k] = from[at + k] as number;
      normals[3 * v + k] = (from[at + 3 + k] as number) / length;
    }
  }
  return { positions, normals, triangles: triVerts, edges: creases(mesh, positions, normals) };
}

/** Pairs of points: every side of two triangles whose normals differ there. */
function creases(mesh: Mesh, positions: Float32Array, normals: Float32Array): Float32Array {
  const { triVerts, mergeFromVert, mergeToVert } = mesh;
  const count = positions.length / 3;
  const point = new Uint32Array(count).map((_, v) => v);
  const parted = new Uint8Array(count);
  for (let i = 0; i < mergeFromVert.length; i++) {
    const [from, to] = [mergeFromVert[i] as number, mergeToVert[i] as number];
    point[from] = to;
    parted[from] = 1;
    parted[to] = 1;
  }
  const apart = (a: number, b: number) =>
    a !== b &&
    (normals[3 * a] as number) * (normals[3 * b] as number) +
      (normals[3 * a + 1] as number) * (normals[3 * b + 1] as number) +
      (normals[3 * a + 2] as number) * (normals[3 * b + 2] as number) <
      CREASE;

  const waiting = new Map<number, readonly [number, number]>();
  const lines: number[] = [];
  for (let t = 0; t < triVerts.length; t += 3) {
    for (let k = 0; k < 3; k++) {
      const a = triVerts[t + k] as number;
      const b = triVerts[t + ((k + 1) % 3)] as number;
      // a side both of whose ends are whole lies inside a smooth face
      if (!parted[a] || !parted[b]) continue;
      const [p, q] = [point[a] as number, point[b] as number];
      const other = waiting.get(q * count + p);
      if (!other) {
        waiting.set(p * count + q, [a, b]);
      } else if (apart(a, other[1]) || apart(b, other[0])) {
        for (let i = 3 * a; i < 3 * a + 3; i++) lines.push(positions[i] as number);
        for (let i = 3 * b; i < 3 * b + 3; i++) lines.push(positions[i] as number);
      }
    }
  }
  return new Float32Array(lines);
}
