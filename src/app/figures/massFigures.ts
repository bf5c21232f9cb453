import type { NumberField } from '../../design/fields/kinds.ts';
import { FIELDS } from '../../design/fields.ts';
import { fixed } from '../../report/said.ts';
import { timberSource } from '../../trade/timberSource.ts';
import type { Figure } from './figure.ts';
import type { Weighed } from './figuresOf.ts';
import { type Pairs, pairFigure } from './pairs.ts';

/** What the bridge weighs, alone and with saddle and pins where they are weighed. */
export function massFigures({ accepted, figures }: Weighed, pairs: Pairs): readonly Figure[] {
  const { design, curves } = accepted;
  const { timber } = design;
  const { mass, properties } = figures;
  const density = `density ${timber.density} kg/m³ (${timberSource(timber, 'density')})`;
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
            source: entry(
              timber.saddleDensity,
              FIELDS.timber.saddleDensity,
              'bone, from memory: weigh a blank',
            ),
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
            source: entry(timber.pinMass, FIELDS.timber.pinMass, 'weigh a set and divide'),
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

/** Where a number comes from that nobody need have entered. */
function entry(value: number, field: NumberField, advice: string): string {
  return value === field.default ? `A guess of ours; ${advice}.` : 'Your own entry.';
}
