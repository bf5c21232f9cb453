import type { Holes } from '../../models/curves/curves.ts';
import type { SolidFigures } from '../../models/solid/solidFigures.ts';
import { massG, type SurfaceFigures, surfaceFigures } from '../../models/surface/figures.ts';
import type { Geometry } from '../../workers/geometry.ts';
import type { AcceptedDesign } from '../design/acceptDesign.ts';

/** What `figures` prints of one design: mm, mm², mm³, grams; boxes are x0, y0, z0, x1, y1, z1. */
export interface DesignFigures {
  readonly name: string;
  /** How the pin holes stand in `solid`, `surface`, `massG` and `centroidMm`. */
  readonly holes: Holes;
  /** By the exact kernel. */
  readonly solid: SolidFigures;
  /** By integration of the curves, without any kernel. */
  readonly surface: SurfaceFigures;
  readonly massG: number;
  readonly massByHolesG: Readonly<Record<Holes, number>>;
  readonly centroidMm: readonly [number, number, number];
  readonly crownRadiusMm: number;
}

/** The figures of one design. Throws as `Geometry.solid` does. */
export async function figuresOf(
  { text, design, curves }: AcceptedDesign,
  holes: Holes,
  geometry: Geometry,
): Promise<DesignFigures> {
  const { figures: solid } = await geometry.solid(text, holes);
  const surfaces = { drilled: surfaceFigures(curves, 'drilled'), reamed: surfaceFigures(curves, 'reamed') };
  const mass = (as: Holes) => massG(surfaces[as].volumeMm3, design.timber.density);
  return {
    name: design.guitar.name,
    holes,
    solid,
    surface: surfaces[holes],
    massG: mass(holes),
    massByHolesG: { drilled: mass('drilled'), reamed: mass('reamed') },
    centroidMm: solid.centroidMm,
    crownRadiusMm: curves.profile.crownRadius,
  };
}
