import type { Holes } from '../../models/curves/curves.ts';
import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { fingerprint } from '../sheets/fingerprint.ts';
import { safeName } from './safeName.ts';

/**
 * What the name of every file begins with that shows pin holes: `Heron_as-reamed`.
 *
 * @param name the design's, or what it is to be called among others
 */
export function partName(name: string, holes: Holes): string {
  return `${safeName(name)}${holesEnd(holes)}`;
}

/** How a name says the holes, after the design's. */
export const holesEnd = (holes: Holes): string => `_as-${holes}`;

/** What a file of a part calls it inside: design, fingerprint, holes, and whatever else is to be said. */
export function partTitle(
  { design, text }: Pick<AcceptedDesign, 'design' | 'text'>,
  holes: Holes,
  more?: string,
) {
  const said = `${design.guitar.name}, design ${fingerprint(text)}, holes as ${holes}`;
  return more === undefined ? said : `${said}, ${more}`;
}
