import { type LongEdge, outlinePieces } from '../../../models/curves/outlinePieces.ts';
import type { Arc, Chain, Point, Segment } from '../../../models/curves/segment.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { Draft } from '../dimensions/draft.ts';
import { leader } from '../dimensions/leader.ts';
import { lengthText, type Units } from '../lengthText.ts';
import type { View } from '../paper/view.ts';
import type { Typeface } from '../sheet.ts';
import { bothWays, pointings } from './pointings.ts';

/** Radii that differ by less are one, mm. */
const SAME = 1e-6;

/** The plan's radii: corners, tips, sweeps, bows and knees; each once, with how often it is there. */
export function planLeaders(
  { curves, text }: AcceptedDesign,
  view: View,
  units: Units,
  typeface: Typeface,
): readonly Draft[] {
  const { front, back, tip, frontCorner, backCorner } = outlinePieces(curves.outline, text);
  const say = (pieces: Chain, radius: number) =>
    pieces.length > 1 ? `${pieces.length}× R${lengthText(radius, units)}` : `R${lengthText(radius, units)}`;
  const radius = (
    arcs: readonly Arc[],
    shares: readonly number[],
    outside: (way: Point, at: Point) => boolean,
  ) => {
    const first = arcs[0];
    return first ? [leader(say(arcs, first.radius), pointings(arcs, shares, view, outside), typeface)] : [];
  };
  const away = ([x, y]: Point, at: Point) => x * at[0] + y * (at[1] - middle) > 0;
  const middle = (front.middle + back.middle) / 2;
  const corners = [frontCorner, backCorner]
    .flatMap((s) => (s?.kind === 'arc' ? bothWays(s) : []))
    .filter(isArc);
  const round = tip.length > 1;
  const tips = tip.filter(isArc);
  const along = (edge: LongEdge, up: 1 | -1) =>
    grouped(
      edge.pieces.filter(isArc).flatMap((s) => (s.from[0] < 0 ? [s] : bothWays(s).filter(isArc))),
    ).flatMap((arcs) => radius(arcs, [0.35, 0.65, 0.2, 0.8], ([, y]) => y * up > 0));
  return [
    ...grouped(corners).flatMap((arcs) => radius(arcs, [0.5, 0.3, 0.7], away)),
    ...(round
      ? radius(
          tips.slice(0, 1).flatMap((s) => bothWays(s).filter(isArc)),
          [0.5, 0.3, 0.7],
          away,
        )
      : radius(
          tips.flatMap((s) => bothWays(s).filter(isArc)),
          [0.2, 0.8, 0.35, 0.65],
          away,
        )),
    ...along(back, -1),
    ...along(front, 1),
  ];
}

const isArc = (s: Segment): s is Arc => s.kind === 'arc';

function grouped(arcs: readonly Arc[]): readonly (readonly Arc[])[] {
  const groups: Arc[][] = [];
  for (const one of arcs) {
    const same = groups.find((g) => Math.abs((g[0] as Arc).radius - one.radius) < SAME);
    if (same) same.push(one);
    else groups.push([one]);
  }
  return groups;
}
