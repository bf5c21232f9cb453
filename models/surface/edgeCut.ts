import type { Nearest } from './plan.ts';

/** A point of the part, mm. */
export type Spot = readonly [number, number, number];

/** What is done to the edge all round the top. */
export interface EdgeCut {
  /** Wood farther than this from the outline keeps its uncut top, mm. */
  readonly reach: number;
  /** z of the top that is left over a place inside the outline, `near` being the outline's nearest place. */
  height(x: number, y: number, near: Nearest): number;
  /** The edge's surface at `s`: from a share across it (0 where it leaves the top, 1 where it meets the wall). */
  across(s: number): (share: number) => Spot;
  /** Lengths along the outline between which the surface is smooth. */
  readonly breaks: readonly number[];
}
