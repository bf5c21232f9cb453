import type { Point } from '../../../models/curves/segment.ts';
import { TEXT } from '../paper/inks.ts';
import { onPaper, type View } from '../paper/view.ts';
import type { Typeface } from '../sheet.ts';
import type { Draft } from './draft.ts';
import { linear } from './linear.ts';

/** From the part to the first dimension line, and from each to the next, mm on paper. */
const FIRST_LANE = 9;
const LANE = 7;

export type Side = 'above' | 'below' | 'left' | 'right';

/** A level or upright dimension beside a view, its ends in the part's millimetres. */
export interface Laned {
  readonly side: Side;
  readonly label: string;
  readonly from: Point;
  readonly to: Point;
  readonly clear?: number;
  /** Turned from level by so much, radians: for a row that leans. Only above and below. */
  readonly lean?: number;
}

/** A dimension and the lane it stands in, 0 nearest to the part. */
interface InLane {
  readonly dimension: Laned;
  readonly lane: number;
}

/** Which of a view's sides has how many lanes, and what stands in them. */
export interface Lanes {
  readonly all: readonly InLane[];
  /** From the part to the first dimension line, mm on paper. */
  readonly first: number;
  /** Room that a side needs, mm on paper. */
  depth(side: Side): number;
}

/**
 * Puts each dimension into the lane nearest to the part in which it runs into no other; give the shortest first.
 *
 * @param first from the part to the first dimension line, mm on paper
 */
export function lanesOf(dimensions: readonly Laned[], scale: number, first = FIRST_LANE): Lanes {
  const all: InLane[] = [];
  for (const dimension of dimensions) {
    const mine = all.filter((other) => other.dimension.side === dimension.side);
    let lane = 0;
    while (mine.some((other) => other.lane === lane && meet(other.dimension, dimension, scale))) lane++;
    all.push({ dimension, lane });
  }
  const count = (side: Side) =>
    1 + Math.max(-1, ...all.filter(({ dimension }) => dimension.side === side).map(({ lane }) => lane));
  return {
    all,
    first,
    depth: (side) => (count(side) === 0 ? 0 : first + LANE * (count(side) - 1) + TEXT + 2),
  };
}

/** The lanes' dimensions on paper. `extent` is the view's, in the part's millimetres: left, low, right, high. */
export function drawLanes(
  { all, first }: Lanes,
  view: View,
  extent: readonly [number, number, number, number],
  typeface: Typeface,
): readonly Draft[] {
  const [left, low] = onPaper(view, [extent[0], extent[1]]);
  const [right, high] = onPaper(view, [extent[2], extent[3]]);
  return all.map(({ dimension, lane }) => {
    const out = first + LANE * lane;
    const middle = onPaper(view, [(dimension.from[0] + dimension.to[0]) / 2, 0])[0];
    const through: Readonly<Record<Side, Point>> = {
      left: [left - out, low],
      right: [right + out, low],
      below: [middle, low - out],
      above: [middle, high + out],
    };
    const lean = dimension.lean ?? 0;
    return linear(
      {
        label: dimension.label,
        from: onPaper(view, dimension.from),
        to: onPaper(view, dimension.to),
        along: isUpright(dimension) ? [0, 1] : [Math.cos(lean), Math.sin(lean)],
        through: through[dimension.side],
        ...(dimension.clear === undefined ? {} : { clear: view.scale * dimension.clear + 1 }),
      },
      typeface,
    );
  });
}

const isUpright = ({ side }: Laned) => side === 'left' || side === 'right';

/** Ends that touch are fine: such dimensions stand in one line. */
function meet(a: Laned, b: Laned, scale: number): boolean {
  const axis = isUpright(a) ? 1 : 0;
  const span = (d: Laned) =>
    [Math.min(d.from[axis], d.to[axis]), Math.max(d.from[axis], d.to[axis])] as const;
  const [[a0, a1], [b0, b1]] = [span(a), span(b)];
  const air = 0.01 / scale;
  return a0 < b1 - air && b0 < a1 - air;
}
