import type { Curves } from '../../models/curves/curves.ts';
import { section } from '../../models/surface/section.ts';
import { surfaceOf } from '../../models/surface/surface.ts';

/** Bending stiffness E·I along the bridge at its middle, N·m², slot and reamed holes taken out; E in GPa. */
export function midStiffness(curves: Curves, stiffnessGPa: number): number {
  const { pieces } = section(surfaceOf(curves, 'reamed'), { across: 'x', at: 0 }, 0.01);
  let [area, first, second] = [0, 0, 0];
  for (const polygon of pieces.flatMap(({ outer, holes }) => [outer, ...holes])) {
    polygon.forEach(([y, z], i) => {
      const [y1, z1] = polygon[(i + 1) % polygon.length] ?? [y, z];
      const cross = y * z1 - y1 * z;
      area += cross / 2;
      first += (cross * (z + z1)) / 6;
      second += (cross * (z * z + z * z1 + z1 * z1)) / 12;
    });
  }
  return (stiffnessGPa * (second - first ** 2 / area)) / 1000;
}
