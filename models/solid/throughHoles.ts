import type { PartMesh } from '../mesh/partMesh.ts';

/**
 * Holes that go right through a closed mesh in one piece: its genus, from Euler's V − E + F = 2 − 2g once vertices that
 * stand in the same place are one. Undefined when an edge isn't in exactly two triangles, so that the mesh isn't closed.
 */
export function throughHoles(mesh: PartMesh): number | undefined {
  const { positions, triangles } = mesh;
  const places = new Map<string, number>();
  const place = new Uint32Array(positions.length / 3);
  for (let v = 0; v < place.length; v++) {
    const key = `${positions[3 * v]},${positions[3 * v + 1]},${positions[3 * v + 2]}`;
    const found = places.get(key);
    place[v] = found ?? places.size;
    if (found === undefined) places.set(key, places.size);
  }
  const edges = new Map<number, number>();
  let faces = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [0, 1, 2].map((i) => place[triangles[t + i] as number] as number);
    if (new Set(corners).size < 3) continue;
    faces++;
    corners.forEach((a, i) => {
      const b = corners[(i + 1) % 3] as number;
      const key = Math.min(a, b) * places.size + Math.max(a, b);
      edges.set(key, (edges.get(key) ?? 0) + 1);
    });
  }
  for (const count of edges.values()) if (count !== 2) return undefined;
  return (2 - (places.size - edges.size + faces)) / 2;
}
