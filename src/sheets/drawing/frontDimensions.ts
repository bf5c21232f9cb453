import { blockCorner } from '../../../models/curves/blockCorner.ts';
import type { Curves } from '../../../models/curves/curves.ts';
import { clipped, elevationOutline } from '../../../models/curves/elevationOutline.ts';
import { halfLengthOf } from '../../../models/curves/outlinePieces.ts';
import type { Arc, Chain, Segment } from '../../../models/curves/segment.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { TOLERANCES } from '../../trade/tolerances.ts';
import type { Draft } from '../dimensions/draft.ts';
import type { Laned } from '../dimensions/lanes.ts';
import { leader } from '../dimensions/leader.ts';
import { angleText, lengthText, limitsText, type Units } from '../lengthText.ts';
import type { View } from '../paper/view.ts';
import type { Typeface } from '../sheet.ts';
import { bothWays, pointings } from './pointings.ts';

/** The front elevation's straight dimensions. */
export function frontDimensions({ curves }: Pick<AcceptedDesign, 'curves'>, units: Units): readonly Laned[] {
  const { profile, underside } = curves;
  const half = halfLengthOf(curves.outline);
  const [crown, shoulder, blend] = topPieces(curves);
  const corner = blockCorner(crown, shoulder, blend);
  const floor = undersideHeight(underside, half, 0);
  const say = (mm: number) => lengthText(mm, units);
  return [
    { side: 'above', label: say(2 * corner[0]), from: [-corner[0], corner[1]], to: corner },
    {
      side: 'left',
      label: `${say(profile.thickness)} ${limitsText(TOLERANCES.crown, units)}`,
      from: [-half, 0],
      to: [-profile.crownEnd / 2, profile.thickness],
    },
    {
      side: 'right',
      label: say(topHeight(profile, half) - floor),
      from: [half, floor],
      to: [half, topHeight(profile, half)],
    },
  ];
}

/** The front elevation's radii and slopes. */
export function frontLeaders(
  { curves, design }: AcceptedDesign,
  view: View,
  units: Units,
  typeface: Typeface,
): readonly Draft[] {
  const [crown, shoulder, blend, ...wing] = topPieces(curves);
  const say = (mm: number) => lengthText(mm, units);
  const above = (label: string, pieces: Chain, shares: readonly number[]) =>
    leader(
      label,
      pointings(pieces, shares, view, ([, y]) => y > 0),
      typeface,
    );
  const below = elevationOutline(curves).below;
  const run = clipped(wing, halfLengthOf(curves.outline));
  return [
    above(`R${say(crown.radius)} crown`, [crown], [0.4, 0.6, 0.3, 0.7, 0.2, 0.8]),
    above(`2× R${say((shoulder as Arc).radius)}`, bothWays(shoulder), [0.5]),
    above(`2× R${say(blend.radius)}`, bothWays(blend), [0.5, 0.7, 0.3]),
    ...wingLabel(run, design.top.wingRise, say).map((label) =>
      above(label, run.slice(0, 1).flatMap(bothWays), [0.6, 0.8, 0.4]),
    ),
    leader(
      undersideLabel(curves, say),
      pointings(below, [0.3, 0.7, 0.2, 0.8, 0.4, 0.6], view, ([, y]) => y < 0),
      typeface,
    ),
  ];
}

/** The right half of the top from the middle outward: crown, shoulder, blend, and what the wing consists of. */
function topPieces({ profile }: Curves): readonly [Arc, Segment, Arc, ...Segment[]] {
  const middle = (profile.chain.length - 1) / 2;
  return profile.chain.slice(middle) as unknown as readonly [Arc, Segment, Arc, ...Segment[]];
}

function wingLabel(run: Chain, rise: number, say: (mm: number) => string): readonly string[] {
  const first = run[0];
  if (!first) return [];
  if (first.kind === 'arc') return [`2× R${say(first.radius)}, level at the tip`];
  if (rise === 0) return ['wings level'];
  const slope = Math.atan2(first.from[1] - first.to[1], first.to[0] - first.from[0]);
  return [`wings fall ${angleText((slope * 180) / Math.PI)}`];
}

function undersideLabel({ underside }: Curves, say: (mm: number) => string): string {
  if (underside.shape === 'flat') return 'underside flat';
  const { radius, shape } = underside;
  return shape === 'sphere'
    ? `underside hollow, SR${say(radius)}`
    : `underside hollow, R${say(radius)}, straight front to back`;
}
