import type { Point } from '../../../models/curves/segment.ts';
import { path, ring, SMALL, words } from '../paper/inks.ts';
import type { Ink } from '../sheet.ts';

/** How many times as wide as it is the saddle is shown from above, so that a filed point can be seen. */
export const WIDENED = 5;

/** The crown under one string, mm. */
export interface SaddlePlace {
  /** Along the slot from its middle. */
  readonly u: number;
  /** From the saddle's middle, positive away from the nut. */
  readonly filed: number;
  /** Over the slot's floor at the middle. */
  readonly height: number;
}

/** The saddle from above, drawn wider than it is, with a point on its crown for each string and the line through them. */
export function saddleFromAbove(
  strings: readonly SaddlePlace[],
  length: number,
  width: number,
  y: number,
): readonly Ink[] {
  const [half, side] = [length / 2, (WIDENED * width) / 2];
  const points = [...strings]
    .sort((a, b) => a.u - b.u)
    .map(({ u, filed }): Point => [u, y - WIDENED * filed]);
  return [
    path(
      'saddle',
      'detail',
      [
        [-half, y - side],
        [half, y - side],
        [half, y + side],
        [-half, y + side],
      ],
      true,
    ),
    path('centre', 'centre', [
      [-half - 2, y],
      [half + 2, y],
    ]),
    path('saddle', 'detail', points),
    ...points.map((at) => ring('saddle', 'detail', at, 0.6)),
    words(`from above, across ${WIDENED} times as wide; the nut is at the top`, [-half, y + side + 1.5], {
      height: SMALL,
    }),
  ];
}
