import { massG, type SurfaceFigures } from '../../../models/surface/figures.ts';
import type { Design } from '../../design/design.ts';
import { sameWood, WOODS } from '../../trade/woods.ts';
import { balance, type Figure, fixed } from './figure.ts';

/** Mass and balance from the wood that stands over each point of the plan. */
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
  const [, y, z] = reamed.centroidMm;
  return [
    mass('Mass, as drilled', drilled),
    mass('Mass, as reamed', reamed),
    {
      label: 'Centre of mass, as reamed',
      value: balance(y, z),
      unit: '',
      formula: 'from the middle of the slot toward the tail or the nut, and up from the glue plane',
      source: 'From the same wood, taken as even throughout.',
    },
  ];
}
