import type { PartMesh } from '../../models/mesh/partMesh.ts';

/** A mesh's heights over a place in plan: every z where a vertical through (x, y) crosses it, from below, mm. */
export function heightsOf(mesh: PartMesh): (x: number, y: number) => readonly number[] {
  const { positions, triangles } = mesh;
  const cell = 2;
  const cells = new Map<string, number[]>();
  const p = (t: number, i: number) => {
    const v = 3 * (triangles[3 * t + i] as number);
    return [positions[v], positions[v + 1], positions[v + 2]] as [number, number, number];
  };
  for (let t = 0; t < triangles.length / 3; t++) {
    const corners = [p(t, 0), p(t, 1), p(t, 2)];
    const xs = corners.map((c) => Math.floor(c[0] / cell));
    const ys = corners.map((c) => Math.floor(c[1] / cell));
    for (let i = Math.min(...xs); i <= Math.max(...xs); i++) {
      for (let j = Math.min(...ys); j <= Math.max(...ys); j++) {
        const key = `${i},${j}`;
        const list = cells.get(key);
        if (list) list.push(t);
        else cells.set(key, [t]);
      }
    }
  }
  return (x, y) => {
    const found: number[] = [];
    for (const t of cells.get(`${Math.floor(x / cell)},${Math.floor(y / cell)}`) ?? []) {
      const [a, b, c] = [p(t, 0), p(t, 1), p(t, 2)];
      const det = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
      if (Math.abs(det) < 1e-12) continue;
      const u = ((x - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (y - a[1])) / det;
      const v = ((b[0] - a[0]) * (y - a[1]) - (x - a[0]) * (b[1] - a[1])) / det;
      if (u < 0 || v < 0 || u + v > 1) continue;
      found.push(a[2] + u * (b[2] - a[2]) + v * (c[2] - a[2]));
    }
    return found.sort((m, n) => m - n);
  };
}
