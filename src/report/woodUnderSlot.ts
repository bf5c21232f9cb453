import type { Curves } from '../../models/curves/curves.ts';
import { slotFloor, slotToPart } from '../../models/curves/slot.ts';
import { topHeight } from '../../models/curves/topHeight.ts';
import { undersideHeight } from '../../models/curves/underside.ts';

/** Distance between the places looked at along the slot, mm. */
const EVERY = 0.5;

/** Least height of the slot's floor over the glue face, mm, along both of its walls and its middle. */
export function woodUnderSlot({ slot, profile, underside }: Curves): number {
  const half = slot.halfLength;
  const round = slot.roundEnds ? slot.width / 2 : 0;
  const places = Math.ceil((2 * half) / EVERY);
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= places; i++) {
    const u = -half + (2 * half * i) / places;
    const intoRound = Math.max(0, Math.abs(u) - (half - round));
    const wide = round > 0 ? Math.sqrt(Math.max(0, round ** 2 - intoRound ** 2)) : slot.width / 2;
    for (const v of [-wide, 0, wide]) {
      const [x, y, z] = slotToPart(slot, profile.thickness, u, v, slotFloor(slot, u));
      // over the wings an open slot's floor is in the air
      if (z < topHeight(profile, x)) least = Math.min(least, z - undersideHeight(underside, x, y));
    }
  }
  return least;
}
