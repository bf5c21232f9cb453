import type { PartMesh } from '../../../workers/protocol.ts';

/** [xMin, yMin, zMin, xMax, yMax, zMax], mm. */
export type Box = readonly [number, number, number, number, number, number];

/** Signed volume of a closed mesh, mm³, by the divergence theorem: positive when its triangles face outward. */
export function meshVolume({ positions, triangles }: Pick<PartMesh, 'positions' | 'triangles'>): number {
  let six = 0;
  for (let i = 0; i + 2 < triangles.length; i += 3) {
    const a = 3 * (triangles[i] as number);
    const b = 3 * (triangles[i + 1] as number);
    const c = 3 * (triangles[i + 2] as number);
    const ax = positions[a] as number;
    const ay = positions[a + 1] as number;
    const az = positions[a + 2] as number;
    const bx = positions[b] as number;
    const by = positions[b + 1] as number;
    const bz = positions[b + 2] as number;
    const cx = positions[c] as number;
    const cy = positions[c + 1] as number;
    const cz = positions[c + 2] as number;
    six += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
  return six / 6;
}

/** The box around xyz triples, mm; a point at the origin when there are none. */
export function boxOf(positions: Float32Array): Box {
  if (positions.length < 3) return [0, 0, 0, 0, 0, 0];
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < positions.length; i++) {
    const value = positions[i] as number;
    const k = i % 3;
    if (value < (low[k] as number)) low[k] = value;
    if (value > (high[k] as number)) high[k] = value;
  }
  return [...low, ...high] as unknown as Box;
}
