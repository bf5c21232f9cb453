import { outermost } from '../../../models/curves/rim/plan.ts';
import type { Point } from '../../../models/curves/segment.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { Draft } from '../dimensions/draft.ts';
import { arrowhead, path, SMALL } from '../paper/inks.ts';
import { onPaper, type View } from '../paper/view.ts';

/** Lengths of the two arrows, mm on paper. */
const GRAIN = 14;
const NUT = 5;

/**
 * In the plan: the grain's direction, a double arrow along the bridge, and an arrow toward the nut. They stand on a
 * wing where there is room, otherwise outside.
 */
export function directions({ curves }: Pick<AcceptedDesign, 'curves'>, at: View): readonly Draft[] {
  const { outline, profile } = curves;
  const points = outermost(outline);
  const half = Math.max(...points.map(([x]) => x));
  const wing = points.filter(([x]) => x > profile.runStart).map(([, y]) => y);
  const [low, high] = [Math.min(...wing), Math.max(...wing)];
  const ys = points.map(([, y]) => y);
  const [back, front] = [Math.min(...ys), Math.max(...ys)];
  const x = (profile.runStart + half) / 2;
  const inside = [0.55, 0.7, 0.4, 0.8, 0.3].flatMap((share) => [
    onPaper(at, [x, share * low]),
    onPaper(at, [x, share * high]),
    onPaper(at, [-x, share * low]),
    onPaper(at, [-x, share * high]),
  ]);
  const outside = [8, 12, 16, 22, 28].flatMap((mm) =>
    [0.5, -0.5, 0.7, -0.7, 0.3, -0.3].flatMap((share): Point[] => {
      const [px, above] = onPaper(at, [share * half, front]);
      const [, below] = onPaper(at, [share * half, back]);
      return [
        [px, above + mm],
        [px, below - mm],
      ];
    }),
  );
  const style = { height: SMALL, layer: 'marks' } as const;
  return [
    {
      label: 'grain',
      style,
      inks: [],
      spots: [...inside, ...outside].map(([gx, gy]) => ({
        at: [gx, gy + 1],
        anchor: 'middle',
        angle: 0,
        inks: [
          path('marks', 'detail', [
            [gx - GRAIN / 2, gy],
            [gx + GRAIN / 2, gy],
          ]),
          arrowhead([gx - GRAIN / 2, gy], [-1, 0], 'marks'),
          arrowhead([gx + GRAIN / 2, gy], [1, 0], 'marks'),
        ],
      })),
    },
    {
      label: 'nut',
      style,
      inks: [],
      spots: [...inside.map(([nx, ny]): Point => [nx, ny]).reverse(), ...outside].map(([nx, ny]) => ({
        at: [nx + 1.2, ny - SMALL / 2],
        anchor: 'start',
        angle: 0,
        inks: [
          path('marks', 'detail', [
            [nx, ny - NUT / 2],
            [nx, ny + NUT / 2],
          ]),
          arrowhead([nx, ny + NUT / 2], [0, 1], 'marks'),
        ],
      })),
    },
  ];
}
