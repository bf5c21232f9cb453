import { massG, type SurfaceFigures } from '../../../models/surface/figures.ts';
import type { Design } from '../../design/design.ts';
import { sameWood, WOODS } from '../../trade/woods.ts';
import { balance, type Figure, fixed } from './figure.ts';

/** Mass, balance and size from the wood that stands over each point of the plan. */
export function massFigures(
  design: Design,
  drilled: SurfaceFigures,
  reamed: SurfaceFigures,
): readonly Figure[] {
  const { timber } = design;
  const wood = WOODS.find((one) => sameWood(one, timber));
  const source = wood ? `Density: ${wood.source}.` : 'Density: your own entry.';
  const mass = (label: string, { volumeMm3 }: SurfaceFigures): Figure => ({
    label,
    value: fixed(massG(volumeMm3, timber.density), 1),
    unit: 'g',
    formula: `density ${timber.density} kg/m³ × volume ${fixed(volumeMm3 / 1000, 2)} cm³`,
    source: `${source} Volume: the wood standing over each point of the plan, added up.`,
    path: 'timber.density',
  });
  const [x0, y0, z0, x1, y1, z1] = reamed.boxMm;
  const [, y, z] = reamed.centroidMm;
  return [
    mass('Mass, as drilled', drilled),
    mass('Mass, as reamed', reamed),
    {
      label: 'Over all',
      value: `${fixed(x1 - x0, 1)} × ${fixed(y1 - y0, 1)} × ${fixed(z1 - z0, 1)}`,
      unit: 'mm',
      formula:
        'length, depth and height of the smallest box round the part, its sides along the guitar’s axes',
      source: 'From the same wood.',
      path: 'footprint.length',
    },
    {
      label: 'Centre of mass',
      value: balance(y, z),
      unit: 'mm',
      formula:
        'from the middle of the slot toward the tail or the nut, and up from the glue plane; as reamed',
      source: 'From the same wood, taken as even throughout.',
    },
  ];
}
