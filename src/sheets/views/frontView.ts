import type { Curves } from '../../../models/curves/curves.ts';
import { clipped, elevationOutline } from '../../../models/curves/elevationOutline.ts';
import { halfLengthOf } from '../../../models/curves/outlinePieces.ts';
import { pinRadii } from '../../../models/curves/pinRadii.ts';
import { insetProfile } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import { path, stroke } from '../paper/inks.ts';
import type { Ink } from '../sheet.ts';
import type { Seen } from './seen.ts';

const PAST = 2;

/** The bridge seen from the tail, x to the right, z up; what is hidden of it: the pin holes. */
export function frontView(curves: Curves): Seen {
  const { edge, profile, underside } = curves;
  const half = halfLengthOf(curves.outline);
  const { body } = elevationOutline(curves);
  return {
    extent: [-half, undersideHeight(underside, half, 0), half, profile.thickness],
    inks: [
      ...(edge.kind === 'none'
        ? []
        : [stroke('profile', 'detail', clipped(insetProfile(profile, edge.size), half))]),
      ...curves.pins.flatMap((pin) => holeLines(pin.at[0], pinRadii(pin).drill, pin.top, underside)),
      path('centre', 'centre', [
        [0, -PAST],
        [0, profile.thickness + PAST],
      ]),
      stroke('profile', 'outline', body, true),
    ],
  };
}

function holeLines(x: number, radius: number, top: number, face: Curves['underside']): readonly Ink[] {
  const sides = [-radius, radius].map((r) =>
    path('hidden', 'hidden', [
      [x + r, undersideHeight(face, x + r, 0)],
      [x + r, top],
    ]),
  );
  const axis = path('centre', 'centre', [
    [x, undersideHeight(face, x, 0) - PAST / 2],
    [x, top + PAST / 2],
  ]);
  return [...sides, axis];
}
