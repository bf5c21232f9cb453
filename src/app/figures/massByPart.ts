import { massG } from '../../../models/surface/figures.ts';
import { fixed } from '../../report/said.ts';
import type { Bar } from './barPicture.ts';
import type { Weighed } from './figuresOf.ts';

/** What each length of the bridge weighs, holes as reamed, and the saddle and pins where they are weighed; g. */
export function massByPart({ accepted, figures, parts }: Weighed): readonly Bar[] {
  const { density } = accepted.design.timber;
  const { saddle, pins } = figures.mass;
  const masses = {
    'left wing': massG(parts.leftWing.volumeMm3, density),
    'middle block': massG(parts.block.volumeMm3, density),
    'right wing': massG(parts.rightWing.volumeMm3, density),
    saddle,
    pins,
  };
  return Object.entries(masses).flatMap(([name, grams]) =>
    grams === undefined ? [] : [{ name, value: grams, text: `${fixed(grams, 2)} g` }],
  );
}
