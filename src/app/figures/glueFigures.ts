import { fixed } from '../../report/said.ts';
import { sourced } from '../fit/sourced.ts';
import type { Figure } from './figure.ts';
import type { Weighed } from './figuresOf.ts';
import { type Pairs, pairFigure } from './pairs.ts';

/** The glued face, and what it bears. */
export function glueFigures({ figures: { glue, loads } }: Weighed, pairs: Pairs): readonly Figure[] {
  const [, y] = glue.centroidMm;
  const { x, y: across } = glue.secondMm4;
  const area = fixed(glue.areaMm2, 0);
  const load = { note: 'a load: the caution below holds' };
  return [
    ...pairFigure(pairs, 'glue-area', 'holes as reamed', { path: 'footprint.depthCentre' }),
    {
      label: 'Its centroid',
      value: `${fixed(Math.abs(y), 2)} mm ${y < 0 ? 'behind' : 'before'}`,
      unit: '',
      formula: `from the middle of the slot; ${fixed(glue.frontMm, 2)} mm from the front edge, ${fixed(glue.backMm, 2)} mm from the back edge`,
      source: 'Derived here: plane geometry; holes as reamed.',
      path: 'footprint.slotBehindFront',
    },
    {
      label: 'Second moment about its length',
      value: fixed(x / 1e4, 2),
      unit: 'cm⁴',
      ...sourced(['glue-area'], `about the line along the bridge through the centroid; A ${area} mm²`),
      path: 'footprint.depthCentre',
    },
    {
      label: 'Second moment about the strings’ line',
      value: fixed(across / 1e4, 1),
      unit: 'cm⁴',
      formula:
        'I = ∫ x² dA about the line along the strings through the centroid: against one wing lifting before the other',
      source: 'Derived here: plane geometry; the glue face’s hollow is left out.',
      path: 'footprint.length',
    },
    ...pairFigure(pairs, 'glue-shear', `Σ T ${fixed(loads.pullN, 1)} N, A ${area} mm²`, {
      ...load,
      path: 'footprint.depthCentre',
    }),
    ...pairFigure(
      pairs,
      'glue-peel',
      `M ${fixed(loads.coupleNm, 3)} N·m, c ${fixed(glue.backMm, 2)} mm, I ${fixed(x, 0)} mm⁴`,
      { ...load, path: 'footprint.depthCentre' },
    ),
  ];
}
