import type { Design } from '../../src/design/design.ts';
import { type Problem, unfitting } from '../../src/design/problem.ts';
import { distanceTo, isInside } from './chain.ts';
import type { Curves } from './curves.ts';
import { edgeSize } from './edgeClearance.ts';
import { LEAST_WOOD, leastBevel } from './pins.ts';
import { gapToCircle } from './polygons.ts';
import type { Point } from './segment.ts';
import { slotPlans } from './slotClearance.ts';
import { undersideHeight } from './underside.ts';

/** Whether every pin hole keeps away from the slot and the edges, and every bevel in the wood. */
export function pinClearance(design: Design, curves: Curves): readonly Problem[] {
  return [...pinsBehindSlot(design, curves), ...bevelInWood(design, curves)];
}

function pinsBehindSlot(design: Design, curves: Curves): Problem[] {
  const margin = edgeSize(design) + LEAST_WOOD;
  const plans = slotPlans(curves);
  const given = design.pins.behindSlot;
  const fits = (behind: number) =>
    curves.pins.every((pin) => {
      const at: Point = [pin.at[0], pin.at[1] + given - behind];
      return (
        isInside(curves.outline, at) &&
        distanceTo(curves.outline, at) >= pin.reach + margin &&
        plans.every((plan) => gapToCircle(plan, at, pin.reach) >= LEAST_WOOD)
      );
    });
  if (fits(given)) return [];
  const edge = Math.round(margin * 100) / 100;
  const why = `for holes that keep ${edge} mm from the back edge and ${LEAST_WOOD} mm from the slot`;
  const remedy =
    'Move the pins, deepen the footprint behind the slot, make the holes smaller, or bring two rows closer together.';
  return [unfitting('pins.behindSlot', given, fits, why, remedy)];
}

function bevelInWood(design: Design, curves: Curves): Problem[] {
  const p = design.pins;
  if (p.bevel === 'none') return [];
  const flare = Math.tan((p.bevelAngle * Math.PI) / 360);
  const most = p.drill + 2 * flare * (woodAtPins(curves) - 1);
  if (p.bevelDiameter <= most) return [];
  const fits = (diameter: number) => diameter <= most && diameter >= leastBevel(design);
  const why = 'or the bevel goes through the wood';
  const remedy = 'Take a smaller or a flatter bevel.';
  return [unfitting('pins.bevelDiameter', p.bevelDiameter, fits, why, remedy)];
}

/** Least thickness of the uncut bridge at a pin, mm. */
export function woodAtPins({ pins, underside }: Curves): number {
  return Math.min(...pins.map((pin) => pin.top - undersideHeight(underside, pin.at[0], pin.at[1])));
}
