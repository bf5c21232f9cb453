import type { Place, Side } from './dimension.ts';
import { fitsBetween, slantOf } from './drawLinear.ts';
import { LABEL_HEIGHT, labelWidth } from './label.ts';
import type { ViewName } from './view.ts';

/** A dimension's text and the place chosen for it. */
export interface Chosen {
  readonly text: string;
  readonly place: Place;
}

/** The lanes on one side of a view: how far out each rank's line lies, and how far out the last lane ends, px. */
export interface Lanes {
  readonly lines: ReadonlyMap<number, number>;
  readonly depth: number;
}

/** Air between the part and the first lane, px: the overrun of its chain lines. */
const FIRST = 4;

const NO_LANES: Lanes = { lines: new Map(), depth: 0 };

/** The lanes on every side of every view, at a scale in px a millimetre. */
export function lanesOf(chosen: readonly Chosen[], scale: number): (view: ViewName, side: Side) => Lanes {
  const needs = new Map<string, Map<number, { inner: number; outer: number }>>();
  for (const { text, place } of chosen) {
    const lane = laneOf(place);
    if (!lane) continue;
    const key = `${place.view} ${lane.side}`;
    const ranks = needs.get(key) ?? new Map<number, { inner: number; outer: number }>();
    const { inner, outer } = room(place, text, scale);
    const before = ranks.get(lane.rank);
    ranks.set(lane.rank, {
      inner: Math.max(inner, before?.inner ?? 0),
      outer: Math.max(outer, before?.outer ?? 0),
    });
    needs.set(key, ranks);
  }
  const stacked = new Map([...needs].map(([key, ranks]) => [key, stack(ranks)]));
  return (view, side) => stacked.get(`${view} ${side}`) ?? NO_LANES;
}

/** Which lane a place stands in, if it stands in one. */
export function laneOf(place: Place): { readonly side: Side; readonly rank: number } | undefined {
  if (place.kind !== 'radius') return place;
  return 'rank' in place.leg ? { side: 'above', rank: place.leg.rank } : undefined;
}

function stack(ranks: ReadonlyMap<number, { inner: number; outer: number }>): Lanes {
  let depth = FIRST;
  const lines = new Map<number, number>();
  for (const [rank, { inner, outer }] of [...ranks].sort(([a], [b]) => a - b)) {
    lines.set(rank, depth + inner);
    depth += inner + outer;
  }
  return { lines, depth };
}

/** What a place needs on the near and on the far side of its line, px. */
function room(place: Place, text: string, scale: number): { inner: number; outer: number } {
  const over = LABEL_HEIGHT + 3;
  if (place.kind === 'radius') return { inner: 6, outer: over };
  if (place.kind === 'angle') return { inner: 8, outer: labelWidth(text) + 8 };
  const slant = slantOf(place, scale);
  const fits = fitsBetween(place, text, scale);
  switch (place.side) {
    case 'above':
      return { inner: 5, outer: over + slant };
    case 'below':
      return { inner: over - 2, outer: 4 + slant };
    case 'left':
      return fits ? { inner: 5, outer: over + slant } : { inner: 6, outer: labelWidth(text) + 6 };
    case 'right':
      return fits ? { inner: over - 2, outer: 4 + slant } : { inner: 6, outer: labelWidth(text) + 6 };
  }
}
