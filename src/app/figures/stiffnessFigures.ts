import { TEST_FORCE } from '../../report/bendingFigures.ts';
import { fixed } from '../../report/said.ts';
import { braceSource, timberSource } from '../../trade/timberSource.ts';
import type { Figure } from './figure.ts';
import type { Weighed } from './figuresOf.ts';
import { type Pairs, pairFigure } from './pairs.ts';

/** How stiff the bridge is along its length, what brace it equals, and how it twists. */
export function stiffnessFigures({ accepted, figures, parts }: Weighed, pairs: Pairs): readonly Figure[] {
  const { timber, footprint, top } = accepted.design;
  const { midNm2 } = figures.bending;
  const secondMm4 = (midNm2 * 1000) / timber.stiffness;
  const e = `E ${timber.stiffness} GPa (${timberSource(timber, 'stiffness')})`;
  return [
    ...pairFigure(
      pairs,
      'mid-stiffness',
      `${e}, I ${fixed(secondMm4, 0)} mm⁴, slot and reamed holes taken out`,
      {
        path: 'top.thickness',
      },
    ),
    ...pairFigure(
      pairs,
      'brace',
      `E·I ${fixed(midNm2, 2)} N·m²; ${e}; E_b ${timber.braceStiffness} GPa (${braceSource(timber.braceStiffness)})`,
      {
        note: `${timber.braceWidth} mm wide, E ${timber.braceStiffness} GPa`,
        path: 'timber.braceWidth',
      },
    ),
    ...pairFigure(
      pairs,
      'deflection',
      `on supports under both tips, ${footprint.length} mm apart, ${TEST_FORCE} N half way; ${e}`,
      { path: 'top.thickness' },
    ),
    {
      label: 'Of that give, in the block',
      value: fixed(100 * parts.block.flexShare, 0),
      unit: '%',
      formula: `∫ m²/(E·I) dx over the block, as a share of the whole; wings ${fixed(100 * parts.leftWing.flexShare, 0)} % left and ${fixed(100 * parts.rightWing.flexShare, 0)} % right, as seen with the nut upward`,
      source: 'Derived here: the standard beam of varying section; what shear adds is left out.',
      path: 'top.block',
    },
    ...pairFigure(pairs, 'twist', `block ${top.block} mm long, ${e}`, { path: 'top.block' }),
  ];
}
