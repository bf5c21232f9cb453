/** What the exact kernel measured of a solid that passed the gate. */
export interface SolidFigures {
  readonly valid: true;
  readonly volumeMm3: number;
  readonly areaMm2: number;
  /** [xMin, yMin, zMin, xMax, yMax, zMax] */
  readonly boxMm: readonly [number, number, number, number, number, number];
  readonly centroidMm: readonly [number, number, number];
  readonly throughHoles: number;
}
