import type { Curves } from '../../models/curves/curves.ts';
import { slotFloor, slotToPart } from '../../models/curves/slot.ts';
import { surfaceOf } from '../../models/surface/surface.ts';

/** Distance between the places looked at along the slot, mm. */
const EVERY = 0.5;
/** Kept off the walls and ends, where a column is either wood or slot, mm. */
const OFF = 1e-6;

/** Least wood left under the slot of the finished bridge, mm, read off the wood that stands under its floor. */
export function woodUnder(curves: Curves): number {
  const { slot, profile } = curves;
  const wood = surfaceOf(curves, 'drilled');
  const round = slot.roundEnds ? slot.width / 2 : 0;
  const half = slot.halfLength - OFF;
  const places = Math.ceil((2 * half) / EVERY);
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= places; i++) {
    const u = -half + (2 * half * i) / places;
    const over = Math.max(0, Math.abs(u) - (slot.halfLength - round));
    const wide = round > 0 ? Math.sqrt(Math.max(0, round * round - over * over)) : slot.width / 2;
    for (const side of [-1, 0, 1]) {
      const v = side * Math.max(0, wide - OFF);
      const [x, y, z] = slotToPart(slot, profile.thickness, u, v, slotFloor(slot, u));
      const stretch = wood.columns(x, y)[0];
      // over the wings an open slot's floor is in the air
      if (stretch && Math.abs(stretch[1] - z) < 1e-3) least = Math.min(least, stretch[1] - stretch[0]);
    }
  }
  return least;
}
