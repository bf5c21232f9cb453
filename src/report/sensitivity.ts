import type { Curves } from '../../models/curves/curves.ts';
import { drawCurves } from '../../models/curves/drawCurves.ts';
import type { Design } from '../design/design.ts';
import { fieldsOf } from '../design/fields.ts';
import { DesignError } from '../design/problem.ts';
import { midStiffness } from './midStiffness.ts';
import { woodMass } from './woodMass.ts';

/** What a tenth of a millimetre more of one dimension does. */
export interface Sensitivity {
  readonly path: string;
  readonly label: string;
  /** mm, as it is in the part. */
  readonly value: number;
  /** g, of the wood as reamed. */
  readonly massG: number;
  /** Of the stiffness in the middle, N·m². */
  readonly stiffnessNm2: number;
  /** The same as a share of what it is. */
  readonly stiffnessShare: number;
}

/** The dimensions that a builder would turn, and by how much, mm. */
const KNOBS = [
  ['top', 'thickness'],
  ['top', 'tip'],
  ['top', 'block'],
  ['top', 'wingRise'],
  ['footprint', 'length'],
  ['footprint', 'depthCentre'],
  ['footprint', 'depthWing'],
  ['saddle', 'depth'],
  ['saddle', 'slotWidth'],
  ['pins', 'mouth'],
] as const;
const TENTH = 0.1;

/**
 * How mass and middle stiffness change with each of the main dimensions, per 0.1 mm, everything else as it is, solved
 * numbers too: central differences over ± 0.1 mm, to one side where only that can be drawn. A dimension that moves nothing
 * is left out.
 */
export function sensitivity(design: Design, curves: Curves): readonly Sensitivity[] {
  const now = measured(design, curves);
  return KNOBS.flatMap(([group, key]) => {
    const value = (design[group] as Readonly<Record<string, unknown>>)[key] as number;
    const at = (to: number) => drawn(design, group, key, to);
    const [more, less] = [at(value + TENTH), at(value - TENTH)];
    if (!more && !less) return [];
    const steps = more && less ? 2 : 1;
    const [high, low] = [more ?? now, less ?? now];
    const mass = (high.mass - low.mass) / steps;
    const stiffness = (high.stiffness - low.stiffness) / steps;
    if (Math.abs(mass) < 1e-6 && Math.abs(stiffness) < 1e-6) return [];
    return [
      {
        path: `${group}.${key}`,
        label: fieldsOf(group)[key]?.label ?? key,
        value,
        massG: mass,
        stiffnessNm2: stiffness,
        stiffnessShare: stiffness / now.stiffness,
      },
    ];
  });
}

function measured(design: Design, curves: Curves) {
  return {
    mass: woodMass(design, curves, 'reamed'),
    stiffness: midStiffness(curves, design.timber.stiffness),
  };
}

/** Undefined where it can't be drawn. */
function drawn(design: Design, group: 'top' | 'footprint' | 'saddle' | 'pins', key: string, value: number) {
  const changed: Design = { ...design, [group]: { ...design[group], [key]: value } };
  try {
    return measured(changed, drawCurves(changed));
  } catch (error) {
    if (error instanceof DesignError) return undefined;
    throw error;
  }
}
