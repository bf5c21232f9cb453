import { crossings } from './chain.ts';
import type { Chain, Point, Segment } from './segment.ts';

/** y of each place where a closed chain crosses the upright at x, from back to front, mm. */
export function crossingsAt(chain: Chain, x: number): readonly number[] {
  const swap = ([a, b]: Point): Point => [b, a];
  const swapped = chain.map((s): Segment => {
    const ends = { from: swap(s.from), to: swap(s.to) };
    return s.kind === 'line'
      ? { ...s, ...ends }
      : { ...s, ...ends, centre: swap(s.centre), turn: s.turn === 1 ? -1 : 1 };
  });
  return swapped.flatMap((s) => crossings(s, x)).sort((a, b) => a - b);
}
