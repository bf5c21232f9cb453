import type { Weighed } from '../../report/compare/comparison.ts';
import { fixed } from '../../report/said.ts';
import type { Bar } from './barPicture.ts';
import { PART_NAMES } from './partRows.ts';

/** What each length of the bridge weighs, holes as reamed, and the saddle and pins where they are weighed; g. */
export function massByPart({ figures: { bending, mass } }: Weighed): readonly Bar[] {
  const masses: readonly (readonly [string, number | undefined])[] = [
    ...bending.parts.map(({ name, massG }) => [PART_NAMES[name], massG] as const),
    ['saddle', mass.saddle],
    ['pins', mass.pins],
  ];
  return masses.flatMap(([name, grams]) =>
    grams === undefined ? [] : [{ name, value: grams, text: `${fixed(grams, 2)} g` }],
  );
}
