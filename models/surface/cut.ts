import type { Interval } from './interval.ts';
import type { PlanBox } from './plan.ts';

/** A cut into the body: slot, pin hole or string channel. */
export interface Cut {
  /** In plan, all that the cut can reach in the wood. */
  readonly box: PlanBox;
  /** Between which heights it takes whatever stands at (x, y); nothing outside the cut. */
  removed(x: number, y: number): Interval | undefined;
  /**
   * Visits places that together stand for all of the cut in plan, each with the area it stands for, mm²: a quadrature
   * in the cut's own coordinates, in which what it takes is smooth.
   *
   * @param topHeight z of the uncut top over x
   */
  places(topHeight: (x: number) => number, visit: (x: number, y: number, area: number) => void): void;
}
