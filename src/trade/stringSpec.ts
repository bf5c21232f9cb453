/** One string's make. Diameters in mm, density in kg/m³. A plain string is all core. */
export interface StringSpec {
  /** Over the wrap, if there is one. */
  readonly diameterMm: number;
  readonly wound: boolean;
  /** Of the round steel core; a plain string's is its diameter, whatever stands here. */
  readonly coreMm: number;
  /** Of the wrap's metal; no matter to a plain string. */
  readonly wrapDensityKgM3: number;
}

/** Density of string steel, kg/m³ (from memory; a materials database has 7800, as quoted elsewhere). */
export const STEEL_DENSITY_KG_M3 = 7850;

/** Density of a bronze wrap, kg/m³ (from memory). */
export const BRONZE_DENSITY_KG_M3 = 8800;

/** Young's modulus of string steel, Pa (from memory: handbooks have 195 to 210 GPa for carbon steel wire). */
export const STEEL_MODULUS_PA = 200e9;

/** A core this near to its string's diameter is all of it, mm: gauges are rounded to thousandths of an inch. */
export const ALL_CORE_MM = 0.005;

/** A plain steel string. */
export function plainString(diameterMm: number): StringSpec {
  return { diameterMm, wound: false, coreMm: diameterMm, wrapDensityKgM3: STEEL_DENSITY_KG_M3 };
}

/** A wound string on a round steel core. */
export function woundString(
  diameterMm: number,
  coreMm: number,
  wrapDensityKgM3 = BRONZE_DENSITY_KG_M3,
): StringSpec {
  return { diameterMm, wound: true, coreMm, wrapDensityKgM3 };
}

/** Diameter of what carries the tension, mm. */
export function coreDiameterMm(string: StringSpec): number {
  return string.wound ? string.coreMm : string.diameterMm;
}

/** Cross-section of the core, m². */
export function coreAreaM2(string: StringSpec): number {
  return (Math.PI / 4) * (coreDiameterMm(string) / 1000) ** 2;
}
