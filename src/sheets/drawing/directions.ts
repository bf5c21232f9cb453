import { outermost } from '../../../models/curves/rim/plan.ts';
import type { Point } from '../../../models/curves/segment.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { arrowhead, path, SMALL, words } from '../paper/inks.ts';
import { onPaper, type View } from '../paper/view.ts';
import type { Ink } from '../sheet.ts';

/** Lengths of the two arrows, mm on paper. */
const GRAIN = 14;
const NUT = 5;

/** On the plan's wings: the grain's direction, a double arrow along the bridge, and an arrow toward the nut. */
export function directions({ curves }: Pick<AcceptedDesign, 'curves'>, at: View): readonly Ink[] {
  const { outline, profile } = curves;
  const points = outermost(outline);
  const half = Math.max(...points.map(([x]) => x));
  const wing = points.filter(([x]) => x > profile.runStart).map(([, y]) => y);
  const x = (profile.runStart + half) / 2;
  const [gx, gy] = onPaper(at, [x, 0.55 * Math.min(...wing)]);
  const [nx, ny] = onPaper(at, [-x, 0.55 * Math.max(...wing)]);
  const [left, right]: readonly [Point, Point] = [
    [gx - GRAIN / 2, gy],
    [gx + GRAIN / 2, gy],
  ];
  const tip: Point = [nx, ny + NUT / 2];
  return [
    path('marks', 'detail', [left, right]),
    arrowhead(left, [-1, 0], 'marks'),
    arrowhead(right, [1, 0], 'marks'),
    words('grain', [gx, gy + 1], { height: SMALL, anchor: 'middle', layer: 'marks' }),
    path('marks', 'detail', [[nx, ny - NUT / 2], tip]),
    arrowhead(tip, [0, 1], 'marks'),
    words('nut', [nx + 1.2, ny - SMALL / 2], { height: SMALL, layer: 'marks' }),
  ];
}
