import { channelSides } from '../../../models/curves/channelSides.ts';
import { crossingsAt } from '../../../models/curves/crossingsAt.ts';
import type { Curves, Holes, Pin } from '../../../models/curves/curves.ts';
import { holeRadius } from '../../../models/curves/holeRadius.ts';
import { offsetInward } from '../../../models/curves/offsetInward.ts';
import { openEnd } from '../../../models/curves/openEnd.ts';
import { halfLengthOf } from '../../../models/curves/outlinePieces.ts';
import { pinRows } from '../../../models/curves/pinRows.ts';
import { outermost } from '../../../models/curves/rim/plan.ts';
import type { Chain, Point } from '../../../models/curves/segment.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import { path, ring, stroke } from '../paper/inks.ts';
import { turned } from '../paper/turned.ts';
import type { Ink } from '../sheet.ts';
import type { Seen } from './seen.ts';
import { slotMouth } from './slotMouth.ts';

/** How far centre lines run on past what they centre, mm. */
const PAST = 2;
/** Lines where the top only bends stop short of the outline, mm: they are no edges. */
const SHORT = 0.8;

/** The bridge from above, y (toward the nut) up, its holes as drilled or as reamed. */
export function planView(curves: Curves, holes: Holes): Seen {
  const { outline, edge } = curves;
  const rim = edge.kind === 'none' ? outline : offsetInward(outline, edge.size);
  const points = outermost(outline);
  const ys = points.map(([, y]) => y);
  const half = halfLengthOf(outline);
  return {
    extent: [-half, Math.min(...ys), half, Math.max(...ys)],
    inks: [
      ...bends(curves, rim),
      ...(edge.kind === 'none' ? [] : [stroke('outline', 'detail', rim, true)]),
      ...slotCentres(curves),
      ...pinCentres(curves.pins),
      ...curves.channels.map((c) => stroke('pins', 'detail', channelSides(c, curves))),
      stroke('slot', 'outline', slotMouth(curves), true),
      ...curves.pins.flatMap((pin) => holeRings(pin, holes, undersideHeight(curves.underside, ...pin.at))),
      stroke('outline', 'outline', outline, true),
    ],
  };
}

/** A hole where it is narrowest, with its rim at the top and where bevel and taper meet, if it is wider there. */
function holeRings({ at, top, outline }: Pin, holes: Holes, bottom: number): readonly Ink[] {
  const cut = outline[holes];
  const least = holeRadius(cut, bottom);
  const turns = cut.filter(([, z]) => z < top - 1e-6).map(([r]) => r);
  const rims = [...turns, holeRadius(cut, top)].filter((r) => r > least + 1e-6);
  return [
    ring('pins', 'outline', at, least),
    ...[...new Set(rims)].map((r) => ring('pins', 'detail', at, r)),
  ];
}

/** Where the crown ends and where the wing's run begins, across the part. */
function bends({ profile }: Curves, rim: Chain): readonly Ink[] {
  return [profile.crownEnd, profile.runStart]
    .flatMap((x) => [-x, x])
    .flatMap((x) => {
      const ys = crossingsAt(rim, x);
      const [low, high] = [ys[0], ys[ys.length - 1]];
      if (low === undefined || high === undefined || high - low < 3 * SHORT) return [];
      return [
        path('outline', 'detail', [
          [x, low + SHORT],
          [x, high - SHORT],
        ]),
      ];
    });
}

/** The guitar's centre line, the line across it through the slot's middle, and the slot's own line. */
export function slotCentres({ outline, slot, profile }: Curves): readonly Ink[] {
  const ys = crossingsAt(outline, 0);
  const half = halfLengthOf(outline);
  const along = (slot.roundEnds ? slot.halfLength : openEnd(slot, profile)) + PAST;
  const centre = (chain: Chain) => stroke('centre', 'centre', chain);
  const straight = (a: Point, b: Point) => path('centre', 'centre', [a, b]);
  const axis = path('centre', 'centre', [
    [-along, 0],
    [along, 0],
  ]);
  return [
    straight([0, (ys[0] ?? 0) - PAST], [0, (ys[ys.length - 1] ?? 0) + PAST]),
    straight([-half - PAST, 0], [half + PAST, 0]),
    ...(axis.kind === 'line' ? [centre(turned(axis.chain, slot.angle))] : []),
  ];
}

/** The pins' rows, and a stroke across them at each. */
export function pinCentres(pins: readonly Pin[]): readonly Ink[] {
  return [
    ...pinRows(pins).map(rowLine),
    ...pins.map(({ at: [x, y], reach }) =>
      path('centre', 'centre', [
        [x, y - reach - PAST / 2],
        [x, y + reach + PAST / 2],
      ]),
    ),
  ];
}

function rowLine(row: readonly Pin[]): Ink {
  const [first, last] = [row[0] as Pin, row[row.length - 1] as Pin];
  const long = Math.hypot(last.at[0] - first.at[0], last.at[1] - first.at[1]);
  const [dx, dy] = [(last.at[0] - first.at[0]) / long, (last.at[1] - first.at[1]) / long];
  const on = ({ at, reach }: Pin, way: 1 | -1): Point => [
    at[0] + way * (reach + PAST) * dx,
    at[1] + way * (reach + PAST) * dy,
  ];
  return path('centre', 'centre', [on(first, -1), on(last, 1)]);
}
