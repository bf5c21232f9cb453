import type { PartMesh } from '../../models/mesh/partMesh.ts';

/** What a triangle mesh says of itself once vertices of the same place are one. */
export interface MeshFigures {
  /** Sides of triangles that haven't exactly one neighbour walking them the other way. */
  readonly openSides: number;
  readonly pieces: number;
  /** Handles of all pieces together, by Euler: V − E + F = 2·(pieces − genus). */
  readonly genus: number;
  readonly volume: number;
}

/** Counts and measures a mesh by itself, with no kernel. */
export function closedMesh({ positions, triangles }: Pick<PartMesh, 'positions' | 'triangles'>): MeshFigures {
  const points = new Map<string, number>();
  const at = Array.from({ length: positions.length / 3 }, (_, v) => {
    const place = `${positions[3 * v]} ${positions[3 * v + 1]} ${positions[3 * v + 2]}`;
    const known = points.get(place) ?? points.size;
    points.set(place, known);
    return known;
  });
  const root = Array.from({ length: points.size }, (_, i) => i);
  const find = (i: number): number => {
    let r = i;
    while (root[r] !== r) r = root[r] as number;
    root[i] = r;
    return r;
  };
  const sides = new Map<number, number>();
  let volume = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const v = [0, 1, 2].map((k) => triangles[t + k] as number);
    const corner = v.map((one) => at[one] as number);
    corner.forEach((a, k) => {
      const b = corner[(k + 1) % 3] as number;
      sides.set(a * points.size + b, (sides.get(a * points.size + b) ?? 0) + 1);
      root[find(a)] = find(b);
    });
    const [[ax, ay, az], [bx, by, bz], [cx, cy, cz]] = v.map((one) => [
      ...positions.subarray(3 * one, 3 * one + 3),
    ]) as [Triple, Triple, Triple];
    volume += (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6;
  }
  let openSides = 0;
  for (const [side, count] of sides) {
    const [a, b] = [Math.floor(side / points.size), side % points.size];
    if (count !== 1 || sides.get(b * points.size + a) !== 1) openSides++;
  }
  const pieces = root.filter((r, i) => r === i).length;
  const euler = points.size - sides.size / 2 + triangles.length / 3;
  return { openSides, pieces, genus: pieces - euler / 2, volume };
}

type Triple = [number, number, number];
