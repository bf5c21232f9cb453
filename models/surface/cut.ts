import type { PlanBox } from '../curves/rim/plan.ts';
import type { Point } from '../curves/segment.ts';
import type { Interval } from './interval.ts';

/** The body that cuts go into: heights of its faces, mm. */
export interface Body {
  /** z of the uncut top over x. */
  top(x: number): number;
  /** z of the underside. */
  under(x: number, y: number): number;
}

/** A cut into the body: slot, pin hole or string channel. */
export interface Cut {
  /** In plan, all that the cut can reach in the wood. */
  readonly box: PlanBox;
  /** Between which heights it takes whatever stands at (x, y); nothing outside the cut. */
  removed(x: number, y: number): Interval | undefined;
  /** Places in plan where the cut begins, ends or turns: at a height, or at any from its floor to the top. */
  landmarks(z?: number): readonly Point[];
  /**
   * Visits places that together stand for all of the cut in plan, each with the area it stands for, mm²: a quadrature
   * in the cut's own coordinates, in which what it takes of the body is smooth.
   */
  places(body: Body, visit: (x: number, y: number, area: number) => void): void;
  /** y at which what it takes of the body on the line at x begins, ends or bends, in any order; none where it misses it. */
  turnsAt(x: number, body: Body): readonly number[];
}
