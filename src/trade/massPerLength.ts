import { coreAreaM2, coreDiameterMm, STEEL_DENSITY_KG_M3, type StringSpec } from './stringSpec.ts';

/** Share of a ring that a round wire fills when its turns touch, on a round core. */
const ROUND_WRAP_FILL = Math.PI / 4;

/**
 * Mass per length μ, kg/m. Plain (S4): ρπd²/4. Wound (S5): the core's, and (π/4)·ρ_w·π(D² − d_c²)/4 for a round wrap
 * whose turns touch (geometry; derived).
 */
export function massPerLength(string: StringSpec, steelDensityKgM3 = STEEL_DENSITY_KG_M3): number {
  const core = steelDensityKgM3 * coreAreaM2(string);
  if (!string.wound) return core;
  const ringMm2 = (Math.PI / 4) * (string.diameterMm ** 2 - coreDiameterMm(string) ** 2);
  return core + ROUND_WRAP_FILL * string.wrapDensityKgM3 * ringMm2 * 1e-6;
}
