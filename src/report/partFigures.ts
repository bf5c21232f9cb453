import type { Holes } from '../../models/curves/curves.ts';
import { massG } from '../../models/surface/figures.ts';
import { type GlueFace, glueFace } from '../../models/surface/glueFace.ts';
import { type MassProperties, massProperties } from '../../models/surface/massProperties.ts';
import type { AcceptedDesign } from '../design/acceptDesign.ts';
import type { FitReport } from '../trade/fit/fitReport.ts';
import { type Loads, loads } from '../trade/fit/loads.ts';
import { saddleWeight } from '../trade/fit/saddleWeight.ts';
import { type BendingFigures, bendingFigures } from './bendingFigures.ts';

/** What a bridge weighs, g. */
export interface Masses {
  readonly drilled: number;
  readonly reamed: number;
  /** The saddle that the fit asks for; undefined when it isn't weighed or there is none. */
  readonly saddle: number | undefined;
  /** All pins; undefined when they aren't weighed. */
  readonly pins: number | undefined;
  /** Wood as reamed with what of saddle and pins is weighed. */
  readonly together: number;
}

/** All figures of a design but the exact solid's own. */
export interface PartFigures {
  readonly mass: Masses;
  /** Of the wood, its holes drilled or reamed. */
  readonly properties: Readonly<Record<Holes, MassProperties>>;
  /** Holes as reamed. */
  readonly glue: GlueFace;
  /** Holes as reamed. */
  readonly bending: BendingFigures;
  readonly loads: Loads;
}

/** What a design comes to, from its curves and its fit. Wood is taken as even throughout, along the grain and across. */
export function partFigures({ design, curves, fit }: AcceptedDesign, report: FitReport): PartFigures {
  const { timber } = design;
  const properties = {
    drilled: massProperties(curves, 'drilled'),
    reamed: massProperties(curves, 'reamed'),
  };
  const grams = (holes: Holes) => massG(properties[holes].volumeMm3, timber.density);
  const strung = timber.weighed === 'strung';
  const saddle = strung ? saddleWeight(curves.slot, report.saddle, timber.saddleDensity) : undefined;
  const pins = strung ? timber.pinMass * curves.pins.length : undefined;
  const glue = glueFace(curves, 'reamed');
  return {
    mass: {
      drilled: grams('drilled'),
      reamed: grams('reamed'),
      saddle,
      pins,
      together: grams('reamed') + (saddle ?? 0) + (pins ?? 0),
    },
    properties,
    glue,
    bending: bendingFigures(curves, design),
    loads: loads(design, curves, fit, report, {
      areaMm2: glue.areaMm2,
      secondMm4: glue.secondMm4.x,
      toBackMm: glue.backMm,
      toFrontMm: glue.frontMm,
    }),
  };
}
