import { elevationOutline } from '../../../models/curves/elevationOutline.ts';
import { halfLengthOf } from '../../../models/curves/outlinePieces.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { Design } from '../../design/design.ts';
import { lengthText, type Units } from '../lengthText.ts';
import { path, SMALL, stroke, words } from '../paper/inks.ts';
import { placed } from '../paper/view.ts';
import type { Ink } from '../sheet.ts';
import type { Art } from './art.ts';
import { registration } from './registration.ts';
import { templateTitles } from './templateTitles.ts';

/** Between the two copies, mm. */
const APART = 16;

/** Crown and wings from the side, twice: for the bridge's front and back. */
export function frontTemplate({ curves, design }: AcceptedDesign, units: Units): Art {
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
      howUsed(design),
      `The lowest line’s ends lie at the glue face’s tips; highest at ${lengthText(thickness - low, units)} over them.`,
      'Dashed lines: where the crown ends and where the wing’s run begins.',
    ],
    inks: [
      ...marks.inks,
      ...copy('back, seen from the tail'),
      ...placed({ scale: 1, x: 0, y: step }, copy('front, seen from the nut')),
    ],
  };
}

/** The copies are seen square from the side: along an edge that sweeps out there is more wood than paper. */
function howUsed({ footprint: { frontEdge, backEdge } }: Design): string {
  const cards = 'cut out as a card and held upright';
  if (frontEdge === 'straight' && backEdge === 'straight')
    return 'Glue one copy on the front edge and one on the back edge: both are straight.';
  if (frontEdge !== 'straight' && backEdge !== 'straight')
    return `Don’t glue it: both edges are curved, and longer than the copies. Each copy is ${cards} against its edge.`;
  const [straight, curved] = frontEdge === 'straight' ? ['front', 'back'] : ['back', 'front'];
  return `Glue only the ${straight} copy, on the straight ${straight} edge. The ${curved} edge is curved, and longer than its copy: that one is ${cards} against it.`;
}
