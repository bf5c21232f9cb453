import { sameWood, WOODS } from '../../trade/woods.ts';
import { balance, type Figure, fixed } from './figure.ts';
import type { Weighed } from './figuresOf.ts';
import { type Pairs, pairFigure } from './pairs.ts';

/** What the bridge weighs, alone and with saddle and pins where they are weighed, and how that is spread. */
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
      ? pairFigure(pairs, 'mass-together', 'wood as reamed + saddle + pins', { path: 'timber.weighed' })
      : []),
    ...spread(accepted.design, properties.reamed),
  ];
}

/** Where the wood balances, and how it resists being turned. */
function spread(
  { timber, guitar }: Weighed['accepted']['design'],
  { centroidMm: [x, y, z], inertiaMm5 }: Weighed['figures']['properties']['reamed'],
): readonly Figure[] {
  // kg/m³ to kg/mm³
  const turned = (mm5: number) => mm5 * timber.density * 1e-9;
  const products = [inertiaMm5.xy, inertiaMm5.xz, inertiaMm5.yz].map((one) => fixed(turned(one), 3));
  const even =
    'Derived here: the wood is taken as even throughout; holes as reamed, without saddle and pins.';
  const about = (label: string, mm5: number, formula: string): Figure => ({
    label,
    value: fixed(turned(mm5), 2),
    unit: 'kg·mm²',
    formula: `${formula}, through the centre of mass. Products of inertia xy, xz, yz: ${products.join(', ')} kg·mm².`,
    source: even,
    path: 'timber.density',
  });
  return [
    {
      label: 'Centre of mass, as reamed',
      value: balance(y, z),
      unit: '',
      formula: `∫ r dV / V: from the middle of the slot toward the tail or the nut, and up from the glue plane; ${fixed(guitar.hand === 'right' ? x : -x, 2)} mm toward the treble side`,
      source: even,
    },
    about('Inertia, rolling', inertiaMm5.xx, 'ρ·∫ (y² + z²) dV about the level line along the bridge'),
    about(
      'Inertia, nodding',
      inertiaMm5.yy,
      'ρ·∫ (x² + z²) dV about the level line along the strings: one wing up, the other down',
    ),
    about(
      'Inertia, turning',
      inertiaMm5.zz,
      'ρ·∫ (x² + y²) dV about the upright line, square to the soundboard',
    ),
  ];
}
