import type { Nearest } from './plan.ts';

/** A point of the part, mm. */
export type Spot = readonly [number, number, number];

/** What runs all round the top between it and the walls: nothing but an edge, a chamfer or a round-over. */
export interface Rim {
  /** Its surface at `s` along the outline: from a share across it (0 where it leaves the top, 1 where it meets the wall). */
  across(s: number): (share: number) => Spot;
  /** What each such section is: a straight, a circle's arc, or nothing but a point. */
  readonly section: 'point' | 'straight' | 'arc';
  /** How far along the outline the wall stands that it meets at `s`, mm; beside `s` itself, not a turn away. */
  wallAt(s: number): number;
  /**
   * Lengths along the outline between which it is smooth, mm, from 0 to the whole. A chamfer also bends where the edge
   * that it takes off passed a joint, which neither end of its sections shows.
   */
  readonly breaks: readonly number[];
}

/** A rim that takes wood off. */
export interface EdgeCut extends Rim {
  /** Wood farther than this from the outline keeps its uncut top, mm. */
  readonly reach: number;
  /** z of the top that is left over a place inside the outline, `near` being the outline's nearest place. */
  height(x: number, y: number, near: Nearest): number;
}
