/** Density of bone, kg/m³: from memory, about. */
export const BONE_KG_M3 = 1900;

/** A finished saddle, mm. */
export interface SaddleSize {
  /** Of its broad face before its ends are rounded, mm². */
  readonly face: number;
  readonly width: number;
  /** Heights of those of its ends that are round, as in a slot that stops in the wood. */
  readonly roundEnds: readonly number[];
}

/** Mass of a saddle, g: face × width, less what a half round takes off each end, × density in kg/m³. Plane geometry. */
export function saddleMass({ face, width, roundEnds }: SaddleSize, density: number): number {
  const taken = roundEnds.reduce((sum, height) => sum + ((1 - Math.PI / 4) / 2) * width ** 2 * height, 0);
  return (face * width - taken) * density * 1e-6;
}
