import type { SolidFigures } from '../../../workers/protocol.ts';
import { type Figure, fixed } from './figure.ts';

/** What the exact kernel measured of the present design's solid. */
export function solidFigures({
  volumeMm3,
  areaMm2,
  boxMm,
  centroidMm,
  throughHoles,
}: SolidFigures): readonly Figure[] {
  const [x0, y0, z0, x1, y1, z1] = boxMm;
  const measured = 'Measured on the exact solid, after it was found valid and closed.';
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
      label: 'Box',
      value: `${fixed(x1 - x0, 2)} × ${fixed(y1 - y0, 2)} × ${fixed(z1 - z0, 2)}`,
      unit: 'mm',
      formula: `lowest point ${fixed(z0, 2)}, highest ${fixed(z1, 2)} over the glue plane`,
      source: measured,
    },
    {
      label: 'Centroid',
      value: centroidMm.map((c) => fixed(c, 2)).join(', '),
      unit: 'mm',
      formula:
        'toward the treble side, toward the nut, and up; from the middle of the slot on the glue plane',
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
