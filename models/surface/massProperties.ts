import type { Curves, Holes } from '../curves/curves.ts';
import type { Spot } from '../curves/rim/rim.ts';
import { integrate } from './integrate.ts';

/**
 * A symmetric tensor about axes parallel to the part's: xx = ∫(y² + z²)dV and so on round, xy = −∫xy dV and so on, as
 * in the angular momentum L = I·ω.
 */
export interface Inertia {
  readonly xx: number;
  readonly yy: number;
  readonly zz: number;
  readonly xy: number;
  readonly xz: number;
  readonly yz: number;
}

export interface MassProperties {
  readonly volumeMm3: number;
  readonly centroidMm: Spot;
  /** About the centroid, of volume, mm⁵: times a density in kg/mm³ that is kg·mm². */
  readonly inertiaMm5: Inertia;
}

/**
 * Volume, centre of mass and moments of inertia of wood that is equally dense everywhere, from the curves alone. Pins,
 * saddle, glue and finish are not in it.
 */
export function massProperties(curves: Curves, holes: Holes): MassProperties {
  const m = integrate(curves, holes);
  const [x, y, z] = [m.x / m.volume, m.y / m.volume, m.z / m.volume];
  // second moments about the centroid, by the parallel axis theorem
  const [xx, yy, zz] = [m.xx - m.x * x, m.yy - m.y * y, m.zz - m.z * z];
  return {
    volumeMm3: m.volume,
    centroidMm: [x, y, z],
    inertiaMm5: {
      xx: yy + zz,
      yy: xx + zz,
      zz: xx + yy,
      xy: m.x * y - m.xy,
      xz: m.x * z - m.xz,
      yz: m.y * z - m.yz,
    },
  };
}
