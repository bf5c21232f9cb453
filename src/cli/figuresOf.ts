import type { Holes } from '../../models/curves/curves.ts';
import type { SolidFigures } from '../../models/solid/solidFigures.ts';
import { type SurfaceFigures, surfaceFigures } from '../../models/surface/figures.ts';
import type { Geometry } from '../../workers/geometry.ts';
import type { AcceptedDesign } from '../design/acceptDesign.ts';
import type { Aimed } from '../report/aim/aimedDesign.ts';
import { type PartFigures, partFigures } from '../report/partFigures.ts';
import { type Sensitivity, sensitivity } from '../report/sensitivity.ts';
import { woodMass } from '../report/woodMass.ts';
import { fitReport } from '../trade/fit/fitReport.ts';
import { LOAD_CAUTION } from '../trade/loadCaution.ts';

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
  /** What weight, stiffness, glue and strings come to, its pin holes reamed, without any kernel. */
  readonly figures: PartFigures;
  /** What a tenth of a millimetre more of each main dimension does. */
  readonly sensitivity: readonly Sensitivity[];
  /** The dimension that follows the design's aim; null when it aims at nothing. */
  readonly aimed: Aimed | null;
  readonly caution: string;
}

/** The figures of one design. Throws as `Geometry.solid` does. */
export async function figuresOf(
  accepted: AcceptedDesign,
  holes: Holes,
  geometry: Geometry,
): Promise<DesignFigures> {
  const { text, design, curves, fit, aimed } = accepted;
  const { figures: solid } = await geometry.solid(text, holes);
  const mass = (as: Holes) => woodMass(design, curves, as);
  return {
    name: design.guitar.name,
    holes,
    solid,
    surface: surfaceFigures(curves, holes),
    massG: mass(holes),
    massByHolesG: { drilled: mass('drilled'), reamed: mass('reamed') },
    centroidMm: solid.centroidMm,
    crownRadiusMm: curves.profile.crownRadius,
    figures: partFigures(accepted, fitReport(design, curves, fit)),
    sensitivity: sensitivity(design, curves),
    aimed: aimed ?? null,
    caution: LOAD_CAUTION,
  };
}
