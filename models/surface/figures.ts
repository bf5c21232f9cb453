import type { Curves, Holes } from '../curves/curves.ts';
import type { Spot } from '../curves/rim/rim.ts';
import { integrate } from './integrate.ts';
import { blankOf } from './parts.ts';
import { boxOf, type Surface } from './surface.ts';

export interface SurfaceFigures {
  readonly volumeMm3: number;
  /** x0, y0, z0, x1, y1, z1 */
  readonly boxMm: Surface['box'];
  readonly centroidMm: Spot;
}

/** Volume, box and centre of mass of the wood, from the curves alone. */
export function surfaceFigures(curves: Curves, holes: Holes): SurfaceFigures {
  const { volume, x, y, z } = integrate(curves, holes);
  return {
    volumeMm3: volume,
    boxMm: boxOf(blankOf(curves)),
    centroidMm: [x / volume, y / volume, z / volume],
  };
}

/** Mass in grams of `volumeMm3` mm³ of a timber of `density` kg/m³. */
export function massG(volumeMm3: number, density: number): number {
  return volumeMm3 * density * 1e-6;
}
