import type { Holes } from '../../../models/curves/curves.ts';
import type { SolidFigures } from '../../../workers/protocol.ts';
import type { Design } from '../../design/design.ts';
import { fixed } from '../../report/said.ts';
import { balance, type Figure } from './figure.ts';

/** What was measured of the present design's exact solid. */
export function solidFigures(
  { volumeMm3, areaMm2, boxMm, centroidMm, throughHoles }: SolidFigures,
  holes: Holes,
  hand: Design['guitar']['hand'],
): readonly Figure[] {
  const [x0, y0, z0, x1, y1, z1] = boxMm;
  const [x, y, z] = centroidMm;
  const measured = 'Measured on the exact solid, after it was found sound.';
  return [
    {
      label: 'Volume',
      value: fixed(volumeMm3 / 1000, 3),
      unit: 'cm³',
      formula: 'integrated over the solid’s own faces',
      source: measured,
    },
    {
      label: 'Surface',
      value: fixed(areaMm2 / 100, 2),
      unit: 'cm²',
      formula: 'area of all faces, holes and slot included',
      source: measured,
    },
    {
      label: 'Over all',
      value: `${fixed(x1 - x0, 2)} × ${fixed(y1 - y0, 2)} × ${fixed(z1 - z0, 2)}`,
      unit: 'mm',
      formula: `lowest point ${fixed(z0, 2)}, highest ${fixed(z1, 2)} over the glue plane`,
      source: measured,
    },
    {
      label: `Centre of mass, as ${holes}`,
      value: balance(y, z),
      unit: '',
      formula: `from the middle of the slot toward the tail or the nut, and up from the glue plane; ${fixed(hand === 'right' ? x : -x, 2)} mm toward the treble side`,
      source: measured,
    },
    {
      label: 'Holes through',
      value: String(throughHoles),
      unit: '',
      formula: 'counted from the solid’s faces, edges and corners',
      source: measured,
    },
  ];
}
