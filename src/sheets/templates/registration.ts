import type { Point } from '../../../models/curves/segment.ts';
import type { Box } from '../paper/box.ts';
import { cross, SMALL, words } from '../paper/inks.ts';
import type { Ink } from '../sheet.ts';

/** Air between what is drawn and the crosses, and half a cross's length, mm. */
const AIR = 4;
const HALF = 3;

/** Four crosses round a template, a multiple of 5 mm apart, to lay it on another and to check the print by. */
export function registration(box: Box): { readonly inks: readonly Ink[]; readonly box: Box } {
  const fives = (mm: number) => 5 * Math.ceil(mm / 5);
  const [wide, tall] = [fives(box.right - box.left + 2 * AIR), fives(box.top - box.bottom + 2 * AIR)];
  const [x, y] = [(box.left + box.right) / 2, (box.bottom + box.top) / 2];
  const around = { left: x - wide / 2, right: x + wide / 2, bottom: y - tall / 2, top: y + tall / 2 };
  const places: readonly Point[] = [
    [around.left, around.bottom],
    [around.right, around.bottom],
    [around.right, around.top],
    [around.left, around.top],
  ];
  return {
    inks: [
      ...places.flatMap((at) => cross('marks', 'detail', at, HALF)),
      words(`crosses ${wide} × ${tall} mm apart`, [around.left + HALF + 1.5, around.top - SMALL / 2], {
        height: SMALL,
        layer: 'marks',
      }),
    ],
    box: {
      left: around.left - HALF,
      right: around.right + HALF,
      bottom: around.bottom - HALF,
      top: around.top + HALF,
    },
  };
}
