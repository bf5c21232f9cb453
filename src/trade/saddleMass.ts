/** Density of bone, kg/m³: from memory, about. */
export const BONE_KG_M3 = 1900;

/** A finished saddle, mm. */
export interface SaddleSize {
  readonly length: number;
  readonly width: number;
  /** Mean over its length. */
  readonly height: number;
  /** Whether its ends are round, as a slot's that stops in the wood. */
  readonly roundEnds: boolean;
}

/** Mass of a saddle, g: its plan, a stadium or a rectangle, × its mean height × density in kg/m³. */
export function saddleMass({ length, width, height, roundEnds }: SaddleSize, density: number): number {
  const plan = length * width - (roundEnds ? (1 - Math.PI / 4) * width ** 2 : 0);
  return plan * height * density * 1e-6;
}
