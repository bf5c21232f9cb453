import { sameWood, WOODS } from '../../trade/woods.ts';
import { type Figure, fixed } from './figure.ts';
import type { Weighed } from './figuresOf.ts';
import { type Pairs, pairFigure } from './pairs.ts';

/** What the bridge weighs, alone and with saddle and pins where they are weighed. */
export function massFigures({ accepted, figures }: Weighed, pairs: Pairs): readonly Figure[] {
  const { design, curves } = accepted;
  const { timber } = design;
  const { mass, properties } = figures;
  const wood = WOODS.find((one) => sameWood(one, timber));
  const density = `density ${timber.density} kg/m³ (${wood ? wood.source : 'your own entry'})`;
  const of = (id: 'mass-drilled' | 'mass-reamed', holes: 'drilled' | 'reamed') =>
    pairFigure(pairs, id, `${density}, volume ${fixed(properties[holes].volumeMm3 / 1000, 3)} cm³`, {
      path: 'timber.density',
    });
  return [
    ...of('mass-drilled', 'drilled'),
    ...of('mass-reamed', 'reamed'),
    ...(mass.saddle === undefined
      ? []
      : [
          {
            label: 'Saddle',
            value: fixed(mass.saddle, 2),
            unit: 'g',
            formula: `density ${timber.saddleDensity} kg/m³ × the volume of the saddle that the fit asks for`,
            source: 'Your own entry; bone has about 1900 kg/m³ (from memory).',
            path: 'timber.saddleDensity',
          },
        ]),
    ...(mass.pins === undefined
      ? []
      : [
          {
            label: 'Pins',
            value: fixed(mass.pins, 2),
            unit: 'g',
            formula: `${curves.pins.length} pins × ${timber.pinMass} g`,
            source: 'Your own entry: weigh a set and divide.',
            path: 'timber.pinMass',
          },
        ]),
    ...(timber.weighed === 'strung'
      ? pairFigure(pairs, 'mass-together', 'wood as reamed + saddle + pins', {
          ...(pairs.get('mass-together')?.share === undefined && {
            note: 'of the reference, wood alone is weighed',
          }),
          path: 'timber.weighed',
        })
      : []),
  ];
}
