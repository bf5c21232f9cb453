import type { Holes, Pin } from '../../models/curves/curves.ts';
import { holeRadius } from '../../models/curves/holeRadius.ts';

/** Width in plan of the bevel that stands round a hole, mm: from its outside to where it meets the hole. */
export function bevelWidth({ outline, top }: Pin, holes: Holes): number {
  const [inner] = outline[holes].slice(1, -1).slice(-2);
  return inner ? holeRadius(outline[holes], top) - inner[0] : 0;
}
