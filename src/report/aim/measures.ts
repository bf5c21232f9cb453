import type { Curves } from '../../../models/curves/curves.ts';
import type { Design } from '../../design/design.ts';
import { midStiffness } from '../midStiffness.ts';
import { tipWall } from '../tipWall.ts';
import { woodMass } from '../woodMass.ts';

export type AimOf = Exclude<Design['aim']['of'], 'none'>;

/** What can be aimed at, and how it is measured on a drawn design; in the unit of the aim's own field. */
interface Measure {
  readonly of: (design: Design, curves: Curves) => number;
  /** How near is met. */
  readonly within: number;
  readonly unit: string;
}

export const MEASURES: Readonly<Record<AimOf, Measure>> = {
  mass: {
    of: (design, curves) => woodMass(design, curves, 'reamed'),
    within: 0.003,
    unit: 'g',
  },
  stiffness: {
    of: ({ timber }, curves) => midStiffness(curves, timber.stiffness),
    within: 0.002,
    unit: 'N·m²',
  },
  tip: { of: (design) => tipWall(design), within: 0.0005, unit: 'mm' },
};
