import { halfLengthOf } from '../../../models/curves/outlinePieces.ts';
import { drop } from '../../../models/curves/profile.ts';
import { arc, line, type Point } from '../../../models/curves/segment.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { lengthText, type Units } from '../lengthText.ts';
import { path, stroke, words } from '../paper/inks.ts';
import type { Ink } from '../sheet.ts';
import type { Art } from './art.ts';
import { registration } from './registration.ts';

/** How deep a gauge is at its narrowest, and between the two, mm. */
const DEEP = 16;
const APART = 10;
/** How far a gauge goes on beyond what it gauges, mm. */
const BEYOND = 4;

/** Arcs to cut out of card or sheet: the soundboard's, for the underside, and the crown's, to lay on the top. */
export function gauges({ curves }: AcceptedDesign, units: Units): Art {
  const { profile, underside } = curves;
  const say = (mm: number) => lengthText(mm, units);
  const bottom = underside.shape === 'flat' ? undefined : underside.radius;
  const wide = halfLengthOf(curves.outline) + BEYOND;
  const crown = hollow(profile.crownRadius, profile.crownEnd + BEYOND);
  const round = bottom === undefined ? undefined : convex(bottom, wide);
  const lift = round ? DEEP + APART + drop(profile.crownRadius, profile.crownEnd + BEYOND) : 0;
  const half = round ? wide : profile.crownEnd + BEYOND;
  const box = {
    left: -half,
    right: half,
    bottom: round
      ? -DEEP - drop(bottom as number, wide)
      : -drop(profile.crownRadius, profile.crownEnd + BEYOND),
    top: lift + DEEP,
  };
  const marks = registration(box);
  const raised: readonly Ink[] = [
    stroke('profile', 'detail', moved(crown, lift), true),
    ...middle(lift - 2, lift + DEEP + 2),
    words(`crown R${say(profile.crownRadius)}`, [4, lift + DEEP / 2], { layer: 'marks' }),
  ];
  return {
    id: 'gauges',
    title: 'Templates: gauges',
    box: marks.box,
    notes: [
      'Crown gauge: laid across the top it touches from end to end of the crown.',
      round
        ? `Underside gauge: held under the bridge it touches all along; on a straight edge the underside stands ${say(drop(bottom as number, wide - BEYOND))} hollow over the bridge’s length.`
        : 'The underside is flat: check it with a straightedge.',
    ],
    inks: [
      ...marks.inks,
      ...raised,
      ...(round
        ? [
            stroke('profile', 'detail', round, true),
            ...middle(-DEEP - 2, 2),
            words(`underside R${say(bottom as number)}`, [4, -DEEP / 2 - 1], { layer: 'marks' }),
          ]
        : []),
    ],
  };
}

function middle(from: number, to: number): readonly Ink[] {
  return [
    path('centre', 'centre', [
      [0, from],
      [0, to],
    ]),
  ];
}

/** A strip whose lower edge is a hollow arc, highest at the origin. */
function hollow(radius: number, half: number) {
  const z = -drop(radius, half);
  const p: readonly [Point, Point, Point, Point] = [
    [-half, z],
    [half, z],
    [half, DEEP],
    [-half, DEEP],
  ];
  return [arc(p[0], p[1], [0, -radius], -1), line(p[1], p[2]), line(p[2], p[3]), line(p[3], p[0])];
}

/** A strip whose upper edge is an arc, highest at the origin. */
function convex(radius: number, half: number) {
  const z = -drop(radius, half);
  const p: readonly [Point, Point, Point, Point] = [
    [-half, z - DEEP],
    [half, z - DEEP],
    [half, z],
    [-half, z],
  ];
  return [line(p[0], p[1]), line(p[1], p[2]), arc(p[2], p[3], [0, -radius], 1), line(p[3], p[0])];
}

function moved(chain: ReturnType<typeof hollow>, up: number) {
  const at = ([x, y]: Point): Point => [x, y + up];
  return chain.map((s) =>
    s.kind === 'line'
      ? { ...s, from: at(s.from), to: at(s.to) }
      : { ...s, from: at(s.from), to: at(s.to), centre: at(s.centre) },
  );
}
