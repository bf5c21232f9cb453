import { distance, type Point } from '../../../models/curves/segment.ts';
import { ARROW, arrowhead, path, TEXT } from '../paper/inks.ts';
import type { Ink, Typeface } from '../sheet.ts';
import type { Draft, Spot } from './draft.ts';
import { leader } from './leader.ts';
import { OVER } from './over.ts';
import { slants } from './slants.ts';

/** Between what is measured and its extension line, and how far that goes past the dimension line, mm. */
const GAP = 1;
const PAST = 1.5;

/** A distance on paper, mm there. */
export interface Linear {
  readonly label: string;
  readonly from: Point;
  readonly to: Point;
  /** Unit vector along which it is measured. */
  readonly along: Point;
  /** A place that the dimension line passes. */
  readonly through: Point;
  /** How far from what is measured the extension lines begin, if not at their usual gap: clear of a hole. */
  readonly clear?: number;
}

/** A linear dimension: extension lines, dimension line, and places for its text on the line or beyond either end. */
export function linear(d: Linear, typeface: Typeface): Draft {
  const along = readable(d.along);
  const up: Point = [-along[1], along[0]];
  const share = (p: Point) => (p[0] - d.through[0]) * along[0] + (p[1] - d.through[1]) * along[1];
  const on = (s: number, over = 0): Point => [
    d.through[0] + s * along[0] + over * up[0],
    d.through[1] + s * along[1] + over * up[1],
  ];
  const [low, high] = share(d.from) <= share(d.to) ? [d.from, d.to] : [d.to, d.from];
  const [a, b] = [share(low), share(high)];
  const width = typeface.width(d.label, TEXT);
  const outside = b - a < 2 * ARROW + 1;
  const line = (s: number, t: number): Ink => path('dimensions', 'detail', [on(s), on(t)]);
  const back: Point = [-along[0], -along[1]];
  const inks: readonly Ink[] = [
    ...extension(low, on(a), d.clear),
    ...extension(high, on(b), d.clear),
    ...(outside
      ? [line(a - 2 * ARROW, b + 2 * ARROW), arrowhead(on(a), along), arrowhead(on(b), back)]
      : [line(a, b), arrowhead(on(a), back), arrowhead(on(b), along)]),
  ];
  return { label: d.label, inks, spots: spots() };

  function spots(): readonly Spot[] {
    const angle = (Math.atan2(along[1], along[0]) * 180) / Math.PI;
    const middle = (s: number): Spot => ({ at: on(s, OVER), anchor: 'middle', angle, inks: [] });
    const room = b - a - width - 1;
    const inside =
      room > 0 ? [0, 0.25, -0.25, 0.5, -0.5].map((share) => middle((a + b) / 2 + share * room)) : [];
    const tail = outside ? 2 * ARROW : 0;
    const beyond = [0, 4, 8, 13, 18, 24].flatMap((more): Spot[] => {
      const start = b + 1 + (outside ? ARROW : 0.8) + more;
      const end = a - 1 - (outside ? ARROW : 0.8) - more;
      return [
        { at: on(start, OVER), anchor: 'start', angle, inks: [line(b + tail, start + width)] },
        { at: on(end, OVER), anchor: 'end', angle, inks: [line(end - width, a - tail)] },
      ];
    });
    // between two others a short upright dimension has room for level text only
    const [x, y] = on((a + b) / 2);
    const level = ([1, -1] as const).map(
      (side): Spot => ({
        at: [x + side * 1.2, y - TEXT / 2],
        anchor: side > 0 ? 'start' : 'end',
        angle: 0,
        inks: [],
      }),
    );
    // and where that is too narrow as well, it goes farther off on a leader
    const off = outside ? leader(d.label, slants([x, y]), typeface).spots : [];
    return [...inside, ...beyond, ...(Math.abs(along[0]) < 1e-9 ? [...level, ...off] : [])];
  }
}

/** The way that text reads from the sheet's bottom or from its right. */
function readable([x, y]: Point): Point {
  return x > 1e-9 || (Math.abs(x) <= 1e-9 && y > 0) ? [x, y] : [-x, -y];
}

function extension(from: Point, to: Point, clear = GAP): readonly Ink[] {
  const length = distance(from, to);
  if (length < clear + 0.3) return [];
  const way: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  return [
    path('dimensions', 'detail', [
      [from[0] + clear * way[0], from[1] + clear * way[1]],
      [to[0] + PAST * way[0], to[1] + PAST * way[1]],
    ]),
  ];
}
