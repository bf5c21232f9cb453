import { fixed } from '../../report/said.ts';
import { balance, type Figure } from './figure.ts';
import type { Weighed } from './figuresOf.ts';

/** Where the wood balances, and how it resists being turned about three lines through that place; holes as reamed. */
export function spreadFigures({ accepted, figures }: Weighed): readonly Figure[] {
  const { timber, guitar } = accepted.design;
  const { centroidMm, inertiaMm5 } = figures.properties.reamed;
  const [x, y, z] = centroidMm;
  // kg/m³ to kg/mm³
  const turned = (mm5: number) => mm5 * timber.density * 1e-9;
  const products = [inertiaMm5.xy, inertiaMm5.xz, inertiaMm5.yz].map((one) => fixed(turned(one), 3));
  const source =
    'Derived here: the wood is taken as even throughout; holes as reamed, without saddle and pins.';
  const about = (line: string, mm5: number, formula: string): Figure => ({
    label: `Inertia about ${line}`,
    value: fixed(turned(mm5), 2),
    unit: 'kg·mm²',
    formula: `${formula}. Products of inertia xy, xz, yz: ${products.join(', ')} kg·mm².`,
    source,
    path: 'timber.density',
  });
  return [
    {
      label: 'Centre of mass',
      value: balance(y, z),
      unit: '',
      formula: `∫ r dV/V: from the middle of the slot toward the tail or the nut, and up from the glue plane; ${fixed(guitar.hand === 'right' ? x : -x, 2)} mm toward the treble side`,
      source,
      path: 'footprint.slotBehindFront',
    },
    about(
      'its length',
      inertiaMm5.xx,
      'ρ·∫ (y² + z²) dV about the level line along the bridge (x) through the centre of mass',
    ),
    about(
      'the strings’ line',
      inertiaMm5.yy,
      'ρ·∫ (x² + z²) dV about the level line along the strings (y) through the centre of mass: one wing up, the other down',
    ),
    about(
      'the upright',
      inertiaMm5.zz,
      'ρ·∫ (x² + y²) dV about the line square to the soundboard (z) through the centre of mass',
    ),
  ];
}
