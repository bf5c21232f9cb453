import { outermost } from '../../../models/curves/rim/plan.ts';
import type { Point } from '../../../models/curves/segment.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { Draft, Spot } from '../dimensions/draft.ts';
import { lettered } from '../dimensions/lettered.ts';
import type { Box } from '../paper/box.ts';
import { arrowhead, path, stroke, words } from '../paper/inks.ts';
import type { Ink, Typeface } from '../sheet.ts';
import { slotCentres } from '../views/planView.ts';
import type { Art } from './art.ts';
import { registration } from './registration.ts';
import { templateTitles } from './templateTitles.ts';

/** The outline to glue on the blank, with the centre lines to lay it by. */
export function outlineTemplate(accepted: AcceptedDesign, typeface: Typeface): Art {
  const { curves, design } = accepted;
  const box = planBox(accepted);
  const marks = registration(box);
  const half = box.right;
  const y = box.bottom * 0.45;
  const [left, right]: readonly [Point, Point] = [
    [-0.3 * half, y],
    [0.3 * half, y],
  ];
  const fixed: readonly Ink[] = [
    ...marks.inks,
    ...slotCentres(curves),
    stroke('outline', 'detail', curves.outline, true),
    path('marks', 'detail', [left, right]),
    arrowhead(left, [-1, 0], 'marks'),
    arrowhead(right, [1, 0], 'marks'),
    words('grain', [3, y + 1.2], { layer: 'marks' }),
    words(`${design.guitar.hand === 'left' ? 'left' : 'right'}-handed`, [3, y - 3.7], { layer: 'marks' }),
  ];
  return {
    id: 'outline',
    title: templateTitles.outline,
    box: marks.box,
    notes: [
      'Glue it on the flat top of the blank, its long centre line along the grain. The line is the finished outline: saw outside it, then file and sand to within what is left for finishing.',
      'Crosses and centre lines lie on those of the drilling template.',
    ],
    inks: [...fixed, ...lettered(toward(box), fixed, marks.box, typeface)],
  };
}

/** The box round the plan, mm. */
export function planBox({ curves }: Pick<AcceptedDesign, 'curves'>): Box {
  const points = outermost(curves.outline);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** Which long edge faces the nut. */
export function toward({ left, right, bottom, top }: Box): readonly Draft[] {
  const spots = (y: number): readonly Spot[] =>
    [0.55, 0.7, 0.4, 0.28, 0.62].flatMap((share) =>
      [left, right].map((end) => ({ at: [share * end, y], anchor: 'middle', angle: 0, inks: [] })),
    );
  const style = { height: 2, layer: 'marks' } as const;
  return [
    { label: 'toward the nut', style, inks: [], spots: spots(top + 1.8) },
    { label: 'toward the tail', style, inks: [], spots: spots(bottom - 3.8) },
  ];
}
