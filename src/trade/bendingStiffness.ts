/** Bending stiffness E·I of a section, N·m²: W5, the standard beam; from I in mm⁴ and E along the grain in GPa. */
export function bendingStiffness(secondMm4: number, modulusGPa: number): number {
  return secondMm4 * modulusGPa * 1e-3;
}
