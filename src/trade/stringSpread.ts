import { distance, type Point } from '../../models/curves/segment.ts';

/** How strings or pins stand in their row, mm, centre to centre. */
export interface Spread {
  /** First to last. */
  readonly overall: number;
  /** Each to the next, treble first. */
  readonly gaps: readonly number[];
}

/**
 * Spread of a row of places in plan, mm, treble first. Pins spread along their line; a design's strings
 * square to the centre line, that is with y = 0.
 *
 * @throws RangeError for fewer than two places
 */
export function stringSpread(places: readonly Point[]): Spread {
  const [first, last] = [places[0], places[places.length - 1]];
  if (!first || !last || places.length < 2) throw new RangeError('a spread needs two places or more');
  return {
    overall: distance(first, last),
    gaps: places.slice(1).map((p, i) => distance(p, places[i] as Point)),
  };
}
