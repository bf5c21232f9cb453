import type { Pin } from '../../../models/curves/curves.ts';
import {
  halfLengthOf,
  type LongEdge,
  outlinePieces,
  turnsOf,
  wingEnd,
} from '../../../models/curves/outlinePieces.ts';
import { pinRows } from '../../../models/curves/pinRows.ts';
import type { Point } from '../../../models/curves/segment.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { TOLERANCES } from '../../trade/tolerances.ts';
import type { Laned } from '../dimensions/lanes.ts';
import { lengthText, limitsText, type Units } from '../lengthText.ts';

/** A depth that differs by less is the same, mm. */
const SAME = 1e-6;

/** The plan's straight dimensions, those that stand nearest to the part first. */
export function planDimensions({ curves, text, design }: AcceptedDesign, units: Units): readonly Laned[] {
  const { front, back } = outlinePieces(curves.outline, text);
  const half = halfLengthOf(curves.outline);
  const say = (mm: number) => lengthText(mm, units);
  const own = (of: 'slot-place' | 'pin-place') => limitsText(TOLERANCES[of], units);
  const upright = (label: string, from: Point, to: Point): Laned => ({ side: 'right', label, from, to });
  const axis: Point = [half + 2, 0];
  const [wingBack, wingFront] = [wingEnd(back, half), wingEnd(front, half)];
  const depth = front.middle - back.middle;
  const wingDepth = wingFront[1] - wingBack[1];
  return [
    upright(`${say(front.middle)} ${own('slot-place')}`, axis, [levelEnd(front), front.middle]),
    ...rowPlaces(curves.pins).map(([at, from]) =>
      upright(`${say(from - at[1])} ${own('pin-place')}`, at, [axis[0], from]),
    ),
    ...(Math.abs(wingDepth - depth) > SAME ? [upright(say(wingDepth), wingBack, wingFront)] : []),
    upright(say(depth), [levelEnd(back), back.middle], [levelEnd(front), front.middle]),
    pinSpread(curves.pins, design.pins.spacing === 'equal', say, own('pin-place')),
    ...runs(front, back, half, say),
    { side: 'below', label: say(2 * half), from: [-half, wingBack[1]], to: [half, wingBack[1]] },
  ];
}

/** For each row: where its extension line begins, and the y that its distance is measured from. */
function rowPlaces(pins: readonly Pin[]): readonly (readonly [Point, number])[] {
  let from = 0;
  return pinRows(pins).map((row) => {
    const [a, b] = ends(row);
    const level = Math.abs(a.at[1] - b.at[1]) < SAME;
    const slope = (b.at[1] - a.at[1]) / (b.at[0] - a.at[0]);
    // a row that leans is measured on the centre line
    const y = a.at[1] - slope * a.at[0];
    const place: Point = level ? [b.at[0] + b.reach + 2, y] : [0, y];
    const found = [place, from] as const;
    from = y;
    return found;
  });
}

function pinSpread(pins: readonly Pin[], equal: boolean, say: (mm: number) => string, own: string): Laned {
  const [a, b] = ends(pins);
  const row = ends(pinRows(pins)[0] ?? pins);
  const lean = Math.atan2(row[1].at[1] - row[0].at[1], row[1].at[0] - row[0].at[0]);
  // along the row: in two rows the first and the last pin may stand in different ones
  const spread = Math.abs((b.at[0] - a.at[0]) * Math.cos(lean) + (b.at[1] - a.at[1]) * Math.sin(lean));
  const steps = pins.length - 1;
  return {
    side: 'below',
    label: equal ? `${steps} × ${say(spread / steps)} ${own} (= ${say(spread)})` : `${say(spread)} ${own}`,
    from: a.at,
    to: b.at,
    clear: Math.max(...pins.map((p) => p.reach)),
    lean,
  };
}

/** Full-depth run and sweep: both edges, where both are shaped, have the same. */
function runs(front: LongEdge, back: LongEdge, half: number, say: (mm: number) => string): readonly Laned[] {
  const edge = turnsOf(back) ? back : front;
  const turns = turnsOf(edge);
  if (!turns) return [];
  const side = edge === back ? 'below' : 'above';
  const { fullDepth, sweepEnd } = turns;
  const at = (x: number): Point => [x, edge.middle];
  return [
    ...(fullDepth > 0.5
      ? [{ side, label: say(2 * fullDepth), from: at(-fullDepth), to: at(fullDepth) } as const]
      : []),
    ...(sweepEnd === undefined
      ? []
      : [
          {
            side,
            label: say(sweepEnd - fullDepth),
            from: at(fullDepth),
            to: [sweepEnd, wingEnd(edge, half)[1]],
          } as const,
        ]),
  ];
}

/** x at which the level middle of a long edge ends; 0 when only its very middle is level. */
function levelEnd(edge: LongEdge): number {
  const first = edge.pieces[0];
  return first?.kind === 'line' ? Math.abs(first.to[0]) : 0;
}

/** The pins farthest left and farthest right. */
function ends(row: readonly Pin[]): readonly [Pin, Pin] {
  const sorted = [...row].sort((a, b) => a.at[0] - b.at[0]);
  return [sorted[0] as Pin, sorted[sorted.length - 1] as Pin];
}
