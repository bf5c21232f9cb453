import type { Curves } from '../../../models/curves/curves.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { fixed } from '../../report/said.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import type { Fit } from '../../trade/fit/placeDesign.ts';
import { type Drawn, type Mark, stroke, WIDTH, word } from '../picture/mark.ts';
import { type AlongString, alongString } from './alongString.ts';
import { besides } from './stringRun.ts';

const SIDE = 4;
/** Room over the string for the angle's number, and under the bridge, px. */
const HEAD = 26;
const FOOT = 8;
/** Radius of the break angle's arc, mm, and the least px at which it can be told. */
const ARC = 11;
/** The thinnest line that a string is drawn with, px. */
const THIN = 1.3;

/**
 * One string in side elevation, to scale: from before the bridge over its saddle to the pin, the nut to the right as in
 * the drawing's section, with the angle through which it breaks.
 */
export function elevationPicture(curves: Curves, fit: Fit, report: FitReport, i: number): Drawn {
  const crown = report.crowns[i];
  const broken = report.breaks[i];
  if (!crown || !broken) return { height: 0, marks: [] };
  const cut = alongString(curves, crown, broken, i);
  const diameter = fit.strings[i]?.spec.diameterMm ?? 0;
  const first = cut.string[0] as Point;
  const scale = (WIDTH - 2 * SIDE) / (cut.back - first[0] + 1);
  const highest = crown.height + diameter;
  const at = ([s, z]: Point): Point => [WIDTH - SIDE - scale * (s - first[0]), HEAD + scale * (highest - z)];
  const lowest = Math.min(...cut.wood.flat().map(([, z]) => z));
  const closed = (name: string, points: readonly Point[], fill: 'wood' | 'bone'): Mark => ({
    kind: 'line',
    name,
    pen: 'outline',
    points: points.map(at),
    closed: true,
    fill,
  });
  const middle = besides(cut.string, diameter / 2);
  const marks: Mark[] = [
    stroke('glueLine', 'faint', at([first[0], 0]), at([cut.back + 1, 0])),
    ...cut.wood.map((piece, k) => closed(`wood ${k + 1}`, piece, 'wood')),
    closed('saddle', cut.saddle, 'bone'),
    {
      kind: 'line',
      name: 'string',
      pen: 'string',
      points: middle.map(at),
      width: Math.max(THIN, scale * diameter),
    },
    ...(cut.pin === undefined
      ? []
      : [stroke('pin', 'chain', at([cut.pin, crown.height - 1]), at([cut.pin, lowest - 1]))]),
    ...(broken.over ? breakMarks(cut, middle, broken.over.angle, at) : []),
    ...heightMarks(cut, crown.height, highest, at),
  ];
  return { height: HEAD + scale * (highest - lowest) + FOOT, marks };
}

/** The front run carried on over the crown, the arc to the string behind, and the angle's number over it. */
function breakMarks(
  { string }: AlongString,
  middle: readonly Point[],
  angle: number,
  at: (p: Point) => Point,
): readonly Mark[] {
  const [from, corner] = [middle[0], middle[1]];
  if (!from || !corner || string.length < 3) return [];
  const front = Math.atan2(corner[1] - from[1], corner[0] - from[0]);
  const turned = (by: number, r: number): Point => [
    corner[0] + r * Math.cos(front - by),
    corner[1] + r * Math.sin(front - by),
  ];
  const beta = (angle * Math.PI) / 180;
  const arc = Array.from({ length: 13 }, (_, k) => at(turned((beta * k) / 12, ARC)));
  const [x, y] = at(turned(0, ARC));
  return [
    stroke('straightOn', 'blueHidden', at(corner), at(turned(0, ARC + 2))),
    stroke('break', 'blue', ...arc),
    word('breakAngle', `${fixed(angle, 1)}°`, [x, y - 7], 'middle', 'blue'),
  ];
}

/** Height of the string over the glue plane, beside the bridge's front. */
function heightMarks(
  { string, front }: AlongString,
  height: number,
  highest: number,
  at: (p: Point) => Point,
): readonly Mark[] {
  const [first] = string;
  if (!first) return [];
  const s = (first[0] + front) / 2;
  const [x, low] = at([s, 0]);
  const high = at([0, height])[1];
  return [
    stroke('height', 'blue', [x, low], [x, high]),
    stroke('heightEnds', 'blue', [x - 3, low], [x + 3, low]),
    stroke('heightTop', 'blue', [x - 3, high], [x + 3, high]),
    stroke('heightLine', 'blueHidden', [x - 3, high], at([0, height])),
    word('heightNumber', fixed(height, 2), [WIDTH - SIDE, at([0, highest])[1] - 5], 'end', 'blue'),
  ];
}
