import { halfLengthOf } from '../../../models/curves/outlinePieces.ts';
import { drop } from '../../../models/curves/profile.ts';
import { arc, type Chain, line, type Point } from '../../../models/curves/segment.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { Draft, Spot } from '../dimensions/draft.ts';
import { lettered } from '../dimensions/lettered.ts';
import { lengthText, type Units } from '../lengthText.ts';
import { path, stroke } from '../paper/inks.ts';
import { placedSegment } from '../paper/view.ts';
import type { Ink, Typeface } from '../sheet.ts';
import type { Art } from './art.ts';
import { registration } from './registration.ts';
import { templateTitles } from './templateTitles.ts';

/** How deep a gauge is at its narrowest, and between the two, mm. */
const DEEP = 16;
const APART = 10;
/** How far a gauge goes on beyond what it gauges, mm. */
const BEYOND = 4;

/** One strip to cut out, its arc's middle at (0, y). */
interface Gauge {
  readonly label: string;
  readonly half: number;
  readonly y: number;
  readonly chain: Chain;
}

/** Arcs to cut out of card or sheet: the crown's, to lay on the top, and the soundboard's, for the underside. */
export function gauges({ curves }: AcceptedDesign, units: Units, typeface: Typeface): Art {
  const { profile, underside } = curves;
  const say = (mm: number) => lengthText(mm, units);
  const crownHalf = profile.crownEnd + BEYOND;
  const crown: Gauge = {
    label: `crown R${say(profile.crownRadius)}`,
    half: crownHalf,
    y: DEEP + APART + drop(profile.crownRadius, crownHalf),
    chain: strip(profile.crownRadius, crownHalf, DEEP),
  };
  const half = halfLengthOf(curves.outline);
  const under: Gauge | undefined =
    underside.shape === 'flat'
      ? undefined
      : {
          label: `underside R${say(underside.radius)}`,
          half: half + BEYOND,
          y: 0,
          chain: strip(underside.radius, half + BEYOND, -DEEP),
        };
  const both = under ? [crown, under] : [crown];
  const inks = both.flatMap(({ chain, y }): readonly Ink[] => [
    stroke(
      'profile',
      'detail',
      chain.map((s) => placedSegment(s, { scale: 1, x: 0, y })),
      true,
    ),
    path('centre', 'centre', [
      [0, y - (y > 0 ? 3 : DEEP + 2)],
      [0, y + (y > 0 ? DEEP + 2 : 3)],
    ]),
  ]);
  const wide = Math.max(...both.map((g) => g.half));
  const marks = registration({
    left: -wide,
    right: wide,
    bottom: under ? -DEEP - 2 : DEEP,
    top: crown.y + DEEP + 4,
  });
  const fixed = [...marks.inks, ...inks];
  return {
    id: 'gauges',
    title: templateTitles.gauges,
    box: marks.box,
    notes: [
      'Crown gauge: laid across the top it touches from end to end of the crown.',
      underside.shape === 'flat'
        ? 'The underside is flat: check it with a straightedge.'
        : `Underside gauge: held under the bridge it touches all along. A straightedge laid from tip to tip stands ${say(drop(underside.radius, half))} off the underside in the middle.`,
    ],
    inks: [...fixed, ...lettered(both.map(named), fixed, marks.box, typeface)],
  };
}

/** A strip with one straight long edge, `deep` mm over (or under) the arc's middle, which lies at the origin. */
function strip(radius: number, half: number, deep: number): Chain {
  const z = -drop(radius, half);
  const far = deep > 0 ? deep : deep + z;
  const [left, right]: readonly [Point, Point] = [
    [-half, z],
    [half, z],
  ];
  return [
    arc(left, right, [0, -radius], -1),
    line(right, [half, far]),
    line([half, far], [-half, far]),
    line([-half, far], left),
  ];
}

/** What a gauge is, written on it, or beside it where it is too short. */
function named({ label, half, y }: Gauge): Draft {
  const middle = y > 0 ? y + DEEP / 2 : y - DEEP / 2 - 1;
  const at = (x: number): Spot => ({ at: [x, middle], anchor: 'start', angle: 0, inks: [] });
  const over: Spot = { at: [0, y + DEEP + 3.5], anchor: 'middle', angle: 0, inks: [] };
  return { label, style: { layer: 'marks' }, inks: [], spots: [at(4), at(half + 4), over] };
}
