import { distanceTo } from '../../../models/curves/chain.ts';
import type { Curves } from '../../../models/curves/curves.ts';
import { slotFloor, slotToPart } from '../../../models/curves/slot.ts';

/**
 * Least wood in plan from the slot's front wall to the outline at u along the slot, mm. Taken at the floor, where the wall
 * has its foot: a slot that leans back comes nearest to the front there.
 */
export function woodInFront({ slot, profile, outline }: Curves, u: number): number {
  const radius = slot.width / 2;
  const over = slot.roundEnds ? Math.max(0, Math.abs(u) - (slot.halfLength - radius)) : 0;
  // in a round end the wall comes back toward the middle
  const front = Math.sqrt(Math.max(0, radius ** 2 - over ** 2));
  const [x, y] = slotToPart(slot, profile.thickness, u, front, slotFloor(slot, u));
  return distanceTo(outline, [x, y]);
}
