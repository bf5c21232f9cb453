import type { Profile, Slot } from './curves.ts';
import { lastWith } from './lastWith.ts';
import { slotFloor, slotToPart } from './slot.ts';
import { topHeight } from './topHeight.ts';

/** Where an open slot's floor comes out of the wood between block and wing, mm along the slot. */
export function openEnd(slot: Slot, profile: Profile): number {
  const over = (u: number): number => {
    const [x, , z] = slotToPart(slot, profile.thickness, u, 0, slotFloor(slot, u));
    return topHeight(profile, x) - z;
  };
  return lastWith((u) => over(u) > 0, slot.halfLength);
}
