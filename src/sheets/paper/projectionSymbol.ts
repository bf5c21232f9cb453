import type { Point } from '../../../models/curves/segment.ts';
import type { Ink } from '../sheet.ts';
import { path, ring } from './inks.ts';

export type Projection = 'first-angle' | 'third-angle';

/**
 * The projection symbol of ISO 5456-2 (from memory): a truncated cone from the side and from its end. In first-angle
 * projection the end view stands beyond the cone's wide end, in third-angle projection before its narrow end.
 *
 * @param at middle of the symbol
 * @param size diameter of the wide end, mm
 */
export function projectionSymbol(projection: Projection, [x, y]: Point, size: number): readonly Ink[] {
  const [wide, narrow] = [size / 2, size / 4];
  const side = projection === 'first-angle' ? -1 : 1;
  // the cone narrows toward the left in both
  const cone: Point = [x + side * size * 0.62, y];
  const rings: Point = [x - side * size * 0.62, y];
  return [
    path(
      'frame',
      'detail',
      [
        [cone[0] - size / 2, y - narrow],
        [cone[0] + size / 2, y - wide],
        [cone[0] + size / 2, y + wide],
        [cone[0] - size / 2, y + narrow],
      ],
      true,
    ),
    ring('frame', 'detail', rings, wide),
    ring('frame', 'detail', rings, narrow),
    path('frame', 'centre', [
      [x - size * 1.35, y],
      [x + size * 1.35, y],
    ]),
    path('frame', 'centre', [
      [rings[0], y - wide - 0.8],
      [rings[0], y + wide + 0.8],
    ]),
  ];
}
