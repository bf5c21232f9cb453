import { elevationOutline } from '../../../models/curves/elevationOutline.ts';
import { halfLengthOf } from '../../../models/curves/outlinePieces.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { lengthText, type Units } from '../lengthText.ts';
import { path, SMALL, stroke, words } from '../paper/inks.ts';
import { placed } from '../paper/view.ts';
import type { Ink } from '../sheet.ts';
import type { Art } from './art.ts';
import { registration } from './registration.ts';
import { templateTitles } from './templateTitles.ts';

/** Between the two copies, mm. */
const APART = 16;

/** Crown and wings from the side, twice: for the blank's front and back. */
export function frontTemplate({ curves }: AcceptedDesign, units: Units): Art {
  const half = halfLengthOf(curves.outline);
  const { thickness, crownEnd, runStart } = curves.profile;
  const low = undersideHeight(curves.underside, half, 0);
  const step = thickness - low + APART;
  const box = { left: -half, right: half, bottom: low - 4, top: thickness + step };
  const marks = registration(box);
  const copy = (name: string): readonly Ink[] => [
    stroke('profile', 'detail', elevationOutline(curves).body, true),
    path('centre', 'centre', [
      [0, low - 3],
      [0, thickness + 3],
    ]),
    ...[-runStart, -crownEnd, crownEnd, runStart].map((x) =>
      path('profile', 'hidden', [
        [x, low],
        [x, thickness + 2],
      ]),
    ),
    words(name, [-half + 2, low - 3.5], { height: SMALL, layer: 'marks' }),
  ];
  return {
    id: 'front',
    title: templateTitles.front,
    box: marks.box,
    notes: [
      `Glue one copy on each long side of the blank, the ends of its lowest line on the blank’s flat underside; highest at ${lengthText(thickness - low, units)} over it.`,
      'Dashed lines: where the crown ends and where the wing’s run begins.',
    ],
    inks: [
      ...marks.inks,
      ...copy('back, seen from the tail'),
      ...placed({ scale: 1, x: 0, y: step }, copy('front, seen from the nut')),
    ],
  };
}
