import { chainLength, distanceTo } from '../../models/curves/chain.ts';
import type { Curves } from '../../models/curves/curves.ts';
import { lengthOf, type Point, pointAt } from '../../models/curves/segment.ts';
import { slotFloor, slotToPart } from '../../models/curves/slot.ts';

/** Distance between the places looked at round the slot, mm. */
const EVERY = 0.5;

/**
 * Least distance in plan from a slot that stops in the wood to the outline, mm, at the top and at the floor: a tilted
 * slot comes nearer to the front below. Undefined for a slot that runs out.
 */
export function woodRoundSlot({ slot, profile, outline }: Curves): number | undefined {
  if (!slot.roundEnds) return undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const [u, v] of round(slot.plan)) {
    for (const w of [0, slotFloor(slot, u)]) {
      const [x, y] = slotToPart(slot, profile.thickness, u, v, w);
      least = Math.min(least, distanceTo(outline, [x, y]));
    }
  }
  return least;
}

function round(chain: Curves['outline']): readonly Point[] {
  const points: Point[] = [];
  const step = chainLength(chain) / Math.ceil(chainLength(chain) / EVERY);
  for (const segment of chain) {
    const pieces = Math.ceil(lengthOf(segment) / step);
    for (let i = 0; i < pieces; i++) points.push(pointAt(segment, i / pieces));
  }
  return points;
}
