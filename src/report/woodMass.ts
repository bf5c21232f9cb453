import type { Curves, Holes } from '../../models/curves/curves.ts';
import { massG, surfaceFigures } from '../../models/surface/figures.ts';
import type { Design } from '../design/design.ts';

/** What the wood of a drawn bridge weighs at the design's density, g. */
export function woodMass({ timber }: Pick<Design, 'timber'>, curves: Curves, holes: Holes): number {
  return massG(surfaceFigures(curves, holes).volumeMm3, timber.density);
}
