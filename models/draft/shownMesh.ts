import type { Mesh } from 'manifold-3d';
import type { PartMesh } from '../mesh/partMesh.ts';

/** Cosine of the least angle between two faces that shows as an edge, 1°. */
const CREASE = Math.cos(Math.PI / 180);

/** A mesh with normals as the screen takes it, with the lines along which its normals break. */
export function shownMesh(mesh: Mesh): PartMesh {
  const { vertProperties, numProp, triVerts } = mesh;
  const count = vertProperties.length / numProp;
  const positions = new Float32Array(3 * count);
  const normals = new Float32Array(3 * count);
  for (let v = 0; v < count; v++) {
    const [x, y, z, nx, ny, nz] = vertProperties.subarray(numProp * v, numProp * v + 6) as unknown as Six;
    // where a cut divides a triangle its normals were blended, and are a little short
    const length = Math.hypot(nx, ny, nz);
    positions.set([x, y, z], 3 * v);
    normals.set([nx / length, ny / length, nz / length], 3 * v);
  }
  return { positions, normals, triangles: triVerts, edges: creases(mesh, positions, normals) };
}

type Six = readonly [number, number, number, number, number, number];

/** Pairs of points: every side of two triangles whose normals differ there. */
function creases(mesh: Mesh, positions: Float32Array, normals: Float32Array): Float32Array {
  const { triVerts, mergeFromVert, mergeToVert } = mesh;
  const count = positions.length / 3;
  const point = Uint32Array.from({ length: count }, (_, v) => v);
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
        lines.push(...positions.subarray(3 * a, 3 * a + 3), ...positions.subarray(3 * b, 3 * b + 3));
      }
    }
  }
  return new Float32Array(lines);
}
