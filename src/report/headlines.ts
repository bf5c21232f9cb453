import type { FormulaId } from '../trade/formulas.ts';
import { TEST_FORCE } from './bendingFigures.ts';
import type { PartFigures } from './partFigures.ts';

/** One number by which designs are compared. */
export interface Headline {
  /** Stable, for programs. */
  readonly id: string;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  readonly decimals: number;
  readonly formula: FormulaId;
  /** Whether it is a load: shown with the caution. */
  readonly load: boolean;
  /** Whether it is no more than an estimate: said beside it. */
  readonly estimate: boolean;
}

/** The numbers by which designs are compared, weight and stiffness first, then what the strings do to them. */
export function headlines({ mass, glue, bending, loads }: PartFigures): readonly Headline[] {
  const of = (load: boolean) => {
    return (
      id: string,
      label: string,
      value: number,
      unit: string,
      decimals: number,
      formula: FormulaId,
      estimate = false,
    ): Headline => ({ id, label, value, unit, decimals, formula, load, estimate });
  };
  const [figure, load] = [of(false), of(true)];
  const most = (pick: (one: NonNullable<(typeof loads.strings)[number]>) => number) =>
    Math.max(0, ...loads.strings.flatMap((one) => (one ? pick(one) : [])));
  return [
    figure('mass-drilled', 'Mass, as drilled', mass.drilled, 'g', 2, 'mass'),
    figure('mass-reamed', 'Mass, as reamed', mass.reamed, 'g', 2, 'mass'),
    figure('mass-together', 'Mass with what else is weighed', mass.together, 'g', 2, 'mass'),
    figure('mid-stiffness', 'Stiffness in the middle', bending.midNm2, 'N·m²', 2, 'W5'),
    figure('brace', 'Brace it equals, height', bending.braceMm, 'mm', 2, 'equal-brace'),
    figure('deflection', `Gives under ${TEST_FORCE} N in the middle`, bending.deflectionMm, 'mm', 3, 'W6'),
    figure('twist', 'Twists by a couple of 1 N·m, about', bending.twistDegPerNm, '°', 2, 'twisting', true),
    figure('glue-area', 'Glue area', glue.areaMm2 / 100, 'cm²', 2, 'glue-area'),
    load('pull', 'Strings’ pull', loads.pullN, 'N', 1, 'S2'),
    load('couple', 'String couple', loads.coupleNm, 'N·m', 3, 'B1'),
    load('glue-shear', 'Shear in the glue, mean', loads.glue.shear, 'MPa', 3, 'B6'),
    load('glue-peel', 'Peel at the tail’s edge', loads.glue.peel, 'MPa', 3, 'B6'),
    load(
      'saddle-load',
      'On the saddle, most of a string',
      most(({ saddle }) => saddle.resultant),
      'N',
      1,
      'B2',
    ),
    load(
      'front-wall',
      'On the slot’s front wall, most',
      most(({ walls }) => walls.front),
      'N',
      1,
      'B7',
    ),
    load(
      'wall-stress',
      'Stress in the front wall, most',
      most((one) => one.wallStressMPa),
      'MPa',
      2,
      'B8',
    ),
    load(
      'pin-bearing',
      'On a pin’s hole, most',
      most((one) => one.bearingMPa),
      'MPa',
      2,
      'pin-bearing',
      true,
    ),
  ];
}
