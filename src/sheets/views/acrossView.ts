import type { Curves, Holes, Pin } from '../../../models/curves/curves.ts';
import { holeRadius } from '../../../models/curves/holeRadius.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import { type SectionPiece, section } from '../../../models/surface/section.ts';
import { surfaceOf } from '../../../models/surface/surface.ts';
import { path } from '../paper/inks.ts';
import type { Ink } from '../sheet.ts';
import type { Seen } from './seen.ts';
import { wallAt, wallFoot } from './slotWalls.ts';

/** How far a section's sides may stray from the true ones, mm: a hundredth of a line's width when drawn five times as large. */
const STRAY = 0.001;
const PAST = 1.5;

/** A section: what is cut, to be hatched, beside what is drawn. */
export interface Cut extends Seen {
  readonly pieces: readonly SectionPiece[];
}

/** The section across the bridge through a pin's middle and the slot, seen from the right: y (toward the nut) to the right, z up. */
export function acrossView(curves: Curves, pin: Pin, holes: Holes): Cut {
  const [x] = pin.at;
  const { pieces } = section(surfaceOf(curves, holes), { across: 'x', at: x }, STRAY);
  const points = pieces.flatMap(({ outer }) => outer);
  const extent = extentOf(points);
  const { slot, profile } = curves;
  const top = topHeight(profile, x);
  const foot = wallFoot(slot, profile.thickness, 0, x);
  const below = wallAt(slot, profile.thickness, 0, x, foot[1] - PAST).at;
  const above = wallAt(slot, profile.thickness, 0, x, top + PAST).at;
  return {
    pieces,
    extent,
    inks: [
      ...behindHole(curves, pin, holes),
      ...pieces.flatMap(({ outer, holes }) =>
        [outer, ...holes].map((loop) => path('section', 'outline', loop, true)),
      ),
      path('centre', 'centre', [
        [pin.at[1], extent[1] - PAST],
        [pin.at[1], top + PAST],
      ]),
      path('centre', 'centre', [below, above]),
    ],
  };
}

/** The rims of the hole's far half: at the glue face, where taper and bevel begin, and at the top unless a channel opens it. */
function behindHole({ underside, channels }: Curves, pin: Pin, holes: Holes): readonly Ink[] {
  const outline = pin.outline[holes];
  const bottom = undersideHeight(underside, pin.at[0], pin.at[1]);
  const turns = outline.map(([, z]) => z).filter((z) => z > bottom + 1e-6 && z < pin.top - 1e-6);
  const levels = [bottom, ...turns, ...(channels.length > 0 ? [] : [pin.top])];
  return levels.map((z) => {
    const r = holeRadius(outline, z);
    return path('section', 'detail', [
      [pin.at[1] - r, z],
      [pin.at[1] + r, z],
    ]);
  });
}

export function extentOf(points: readonly Point[]): readonly [number, number, number, number] {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}
