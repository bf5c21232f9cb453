import type { Curves, Holes, Pin } from '../../../models/curves/curves.ts';
import { clipped, elevationOutline } from '../../../models/curves/elevationOutline.ts';
import { holeRadius } from '../../../models/curves/holeRadius.ts';
import { halfLengthOf } from '../../../models/curves/outlinePieces.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { insetProfile } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import { path, stroke } from '../paper/inks.ts';
import type { Ink } from '../sheet.ts';
import type { Seen } from './seen.ts';

const PAST = 2;

/** The bridge seen from the tail, x to the right, z up; what is hidden of it: the pin holes. */
export function frontView(curves: Curves, holes: Holes): Seen {
  const { edge, profile, underside } = curves;
  const half = halfLengthOf(curves.outline);
  const { body } = elevationOutline(curves);
  return {
    extent: [-half, undersideHeight(underside, half, 0), half, profile.thickness],
    inks: [
      ...(edge.kind === 'none'
        ? []
        : [stroke('profile', 'detail', clipped(insetProfile(profile, edge.size), half))]),
      ...curves.pins.flatMap((pin) => holeLines(pin, holes, underside)),
      path('centre', 'centre', [
        [0, -PAST],
        [0, profile.thickness + PAST],
      ]),
      stroke('profile', 'outline', body, true),
    ],
  };
}

/** A hole's sides from the glue face up: its taper where it is reamed; of the bevel only where taper or drill end. */
function holeLines({ at: [x], top, outline }: Pin, holes: Holes, face: Curves['underside']): readonly Ink[] {
  const cut = outline[holes];
  const bottom = undersideHeight(face, x, 0);
  const levels = [bottom, ...cut.map(([, z]) => z).filter((z) => z > bottom + 1e-6 && z < top - 1e-6), top];
  const sides = [-1, 1].map((side) =>
    path(
      'hidden',
      'hidden',
      levels.map((z): Point => [x + side * holeRadius(cut, z), z]),
    ),
  );
  const axis = path('centre', 'centre', [
    [x, bottom - PAST / 2],
    [x, top + PAST / 2],
  ]);
  return [...sides, axis];
}
