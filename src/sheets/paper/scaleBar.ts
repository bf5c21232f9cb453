import type { Point } from '../../../models/curves/segment.ts';
import type { Ink } from '../sheet.ts';
import { path, SMALL, words } from './inks.ts';

/** Length of the bar that tells whether a printer kept the scale, mm. */
export const BAR = 100;

/** A bar of 100 mm with a mark each 10 mm, its left end at a place: to lay a rule on. */
export function scaleBar([x, y]: Point): readonly Ink[] {
  const tick = (mm: number, height: number) =>
    path('marks', 'detail', [
      [x + mm, y],
      [x + mm, y + height],
    ]);
  return [
    path('marks', 'detail', [
      [x, y],
      [x + BAR, y],
    ]),
    ...Array.from({ length: 11 }, (_, i) => tick(10 * i, i % 5 === 0 ? 3 : 1.8)),
    words('100 mm: measure it before you rely on this print', [x, y + 4], { height: SMALL, layer: 'marks' }),
  ];
}
