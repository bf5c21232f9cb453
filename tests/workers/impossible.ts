import type { Curves } from '../../models/curves/curves.ts';

/** A design of this name gets an impossible edge in the test's thread. */
export const IMPOSSIBLE = 'edge larger than the wood';

/** An edge that validation would refuse, so that the kernel meets it: a ball larger than the wood, mm. */
export function withImpossibleEdge(curves: Curves): Curves {
  return { ...curves, edge: { kind: 'round', size: 60 } };
}
