import type { Holes, Pin } from '../../../models/curves/curves.ts';
import { holeRadius } from '../../../models/curves/holeRadius.ts';

/** Whether a hole is drawn with a reamer's taper: a reamer that finds nothing to cut leaves it as drilled. */
export function isTapered({ outline }: Pin, holes: Holes): boolean {
  if (holes === 'drilled') return false;
  return (
    outline.drilled.some(([r, z]) => r > 0 && holeRadius(outline.reamed, z) > r + 1e-6) ||
    outline.reamed.some(([r, z]) => r > holeRadius(outline.drilled, z) + 1e-6)
  );
}
