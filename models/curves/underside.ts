import type { Design } from '../../src/design/design.ts';
import type { Underside } from './curves.ts';

/** The glue face that the design asks for: the soundboard's own shape, or the one set by hand. */
export function underside(design: Design): Underside {
  const shape = design.underside.shape === 'follows' ? design.guitar.soundboard : design.underside.shape;
  const radius =
    design.underside.shape === 'follows' ? design.guitar.soundboardRadius : design.underside.radius;
  return shape === 'flat' ? { shape } : { shape, radius };
}

/**
 * Height of the glue face over the glue plane at (x, y), mm: never positive. The dome's centre stands below the
 * origin; the arch runs along the strings. Sagitta R − √(R² − c²), the whole chord being 2c.
 */
export function undersideHeight(face: Underside, x: number, y: number): number {
  if (face.shape === 'flat') return 0;
  const away = face.shape === 'sphere' ? x * x + y * y : x * x;
  // −c²/(R + √(R² − c²)) keeps its figures where R − √(R² − c²) loses them
  return -away / (face.radius + Math.sqrt(face.radius ** 2 - away));
}
