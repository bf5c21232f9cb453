import type { Curves } from '../../../models/curves/curves.ts';
import type { Place } from './dimension.ts';
import { sectionEnds, slotNotch } from './sectionShapes.ts';

/** Where the section's dimensions may stand, by path. */
export function sectionDimensions(curves: Curves): ReadonlyMap<string, readonly Place[]> {
  const [back] = sectionEnds(curves);
  const { slot, profile } = curves;
  const [, , wall] = slotNotch(curves);
  const along = Math.PI / 2 + slot.tilt;
  const [dy, dz] = [Math.cos(along), Math.sin(along)];
  const linear = { kind: 'linear', view: 'section', rank: 0 } as const;
  return new Map<string, readonly Place[]>([
    [
      'top.thickness',
      [{ ...linear, side: 'left', along: Math.PI / 2, from: [back, 0], to: [back, profile.thickness] }],
    ],
    [
      'saddle.depth',
      [
        {
          ...linear,
          side: 'right',
          along,
          from: wall.from,
          to: [wall.from[0] + slot.depth * dy, wall.from[1] + slot.depth * dz],
        },
      ],
    ],
  ]);
}
