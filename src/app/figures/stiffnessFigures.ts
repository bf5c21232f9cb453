import { TEST_FORCE } from '../../report/bendingFigures.ts';
import type { Weighed } from '../../report/compare/comparison.ts';
import { fixed } from '../../report/said.ts';
import { braceSource, timberSource } from '../../trade/timberSource.ts';
import type { Figure } from './figure.ts';
import { type Pairs, pairFigure } from './pairs.ts';

/** How stiff the bridge is along its length, what brace it equals, and how it twists. */
export function stiffnessFigures({ accepted, figures }: Weighed, pairs: Pairs): readonly Figure[] {
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
    ...pairFigure(pairs, 'twist', `block ${top.block} mm long, ${e}`, { path: 'top.block' }),
  ];
}
