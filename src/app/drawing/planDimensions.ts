import type { Curves } from '../../../models/curves/curves.ts';
import {
  halfLengthOf,
  type LongEdge,
  outlinePieces,
  turnsOf,
  wingEnd,
} from '../../../models/curves/outlinePieces.ts';
import type { Point } from '../../../models/curves/segment.ts';
import type { DesignText } from '../../design/design.ts';
import type { LinearPlace, Place } from './dimension.ts';

const UP = Math.PI / 2;

/** Where the plan's dimensions may stand, by path. Depths stand at the slot's bass end, its own place at the other. */
export function planDimensions(curves: Curves, text: DesignText): ReadonlyMap<string, readonly Place[]> {
  const { front, back } = outlinePieces(curves.outline, text);
  const half = halfLengthOf(curves.outline);
  const bass = curves.slot.angle < 0 ? 1 : -1;
  const found = new Map<string, readonly Place[]>();
  const put = (path: string, place: Place) => found.set(path, [place]);
  const plan = { kind: 'linear', view: 'plan' } as const;
  const [bassSide, otherSide] = bass < 0 ? (['left', 'right'] as const) : (['right', 'left'] as const);

  const wing = (edge: LongEdge): Point => {
    const [, y] = wingEnd(edge, half);
    // a level edge is its own extension: begin where its last straight ends
    const last = edge.pieces[edge.pieces.length - 1];
    const x = last?.kind === 'line' && last.to[1] === y ? last.to[0] : half;
    return [bass * x, y];
  };
  put('footprint.depthCentre', {
    ...plan,
    side: bassSide,
    rank: 2,
    along: UP,
    from: [bass * levelEnd(back), back.middle],
    to: [bass * levelEnd(front), front.middle],
  });
  put('footprint.depthWing', {
    ...plan,
    side: bassSide,
    rank: 1,
    along: UP,
    from: wing(back),
    to: wing(front),
  });
  const slotEnd: Point = [
    -bass * (curves.slot.halfLength * Math.cos(curves.slot.angle) + curves.slot.width / 2),
    0,
  ];
  const pinRow = frontRow(curves, text);
  const outermost = Math.max(...curves.pins.map((p) => Math.abs(p.at[0]) + p.reach));
  const row: Point = [-bass * outermost, pinRow.middle];
  put('footprint.slotBehindFront', {
    ...plan,
    side: otherSide,
    rank: 0,
    along: UP,
    from: slotEnd,
    to: [-bass * levelEnd(front), front.middle],
  });
  put('pins.behindSlot', { ...plan, side: otherSide, rank: 0, along: UP, from: row, to: slotEnd });
  put('saddle.angle', {
    kind: 'angle',
    view: 'plan',
    side: bassSide,
    rank: 0,
    angle: curves.slot.angle,
    begin: curves.slot.halfLength + 1.5,
    end: half,
  });
  put('saddle.slotLength', slotLength(curves));
  put('pins.spread', pinSpread(curves, pinRow.along));
  const shaped = turnsOf(back) ? back : front;
  const turns = turnsOf(shaped);
  if (turns) {
    const { fullDepth, sweepEnd } = turns;
    const at = (x: number): Point => [x, shaped.middle];
    const run = {
      ...plan,
      side: shaped === back ? 'below' : 'above',
      rank: 1,
      along: 0,
    } as const satisfies Partial<LinearPlace>;
    if (fullDepth > 0.5)
      put('footprint.fullDepthLength', { ...run, from: at(-fullDepth), to: at(fullDepth) });
    if (sweepEnd !== undefined) {
      const [, y] = wingEnd(shaped, half);
      put('footprint.sweepLength', { ...run, from: at(fullDepth), to: [sweepEnd, y] });
    }
  }
  return found;
}

/** x at which the level middle of a long edge ends, mm; 0 when only its very middle is level. */
function levelEnd(edge: LongEdge): number {
  const first = edge.pieces[0];
  return first?.kind === 'line' ? Math.abs(first.to[0]) : 0;
}

function slotLength({ slot }: Curves): LinearPlace {
  const [x, y] = [slot.halfLength * Math.cos(slot.angle), slot.halfLength * Math.sin(slot.angle)];
  return {
    kind: 'linear',
    view: 'plan',
    side: 'above',
    rank: 0,
    along: slot.angle,
    from: [-x, -y],
    to: [x, y],
  };
}

/** Where the pins' front row crosses the centre line, y in mm, and which way it goes, radians. */
function frontRow({ pins }: Curves, text: DesignText): { readonly middle: number; readonly along: number } {
  const row = text.pins.rows === 'two' ? pins.filter((_, i) => i % 2 === 0) : pins;
  const ends = [row[0], row[row.length - 1]].sort((a, b) => (a?.at[0] ?? 0) - (b?.at[0] ?? 0));
  const [x0, y0] = ends[0]?.at ?? [0, 0];
  const [x1, y1] = ends[1]?.at ?? [1, 0];
  const slope = (y1 - y0) / (x1 - x0);
  return { middle: y0 - slope * x0, along: Math.atan(slope) };
}

function pinSpread({ pins }: Curves, along: number): LinearPlace {
  const ends = [pins[0], pins[pins.length - 1]].sort((a, b) => (a?.at[0] ?? 0) - (b?.at[0] ?? 0));
  const from = ends[0]?.at ?? [0, 0];
  const to = ends[1]?.at ?? [0, 0];
  return {
    kind: 'linear',
    view: 'plan',
    side: 'below',
    rank: 0,
    along,
    from,
    to,
    clear: Math.max(...pins.map((p) => p.reach)),
  };
}
