import { distanceTo } from '../../../models/curves/chain.ts';
import type { Curves } from '../../../models/curves/curves.ts';
import { slotFloor, slotToPart } from '../../../models/curves/slot.ts';

/**
 * Least wood in plan from the slot's front wall to the outline at u along the slot, mm. Taken at the floor, where the wall
 * has its foot: a slot that leans back comes nearest to the front there.
 */
export function woodInFront({ slot, profile, outline }: Curves, u: number): number {
  const [x, y] = slotToPart(slot, profile.thickness, u, slot.width / 2, slotFloor(slot, u));
  return distanceTo(outline, [x, y]);
}
