import type { Design } from '../../src/design/design.ts';
import { type Problem, tooLittle, tooMuch, unfitting } from '../../src/design/problem.ts';
import { distanceTo, isInside } from './chain.ts';
import type { Curves, Pin } from './curves.ts';
import { edgeSize } from './edgeClearance.ts';
import { LEAST_WOOD } from './pins.ts';
import { gapToCircle } from './polygons.ts';
import { distance, type Point } from './segment.ts';
import { slotPlans } from './slotClearance.ts';
import { undersideHeight } from './underside.ts';

/** Least wood between one hole and the next, mm, at the surface where bevels make them widest. */
export const LEAST_BETWEEN = 0.3;

/** Whether every pin hole keeps to the wood, the block and itself. */
export function pinClearance(design: Design, curves: Curves): readonly Problem[] {
  return [
    ...pinsInBlock(design, curves),
    ...pinsApart(design, curves),
    ...pinsBehindSlot(design, curves),
    ...bevelInWood(design, curves),
  ];
}

function pinsInBlock({ pins, saddle }: Design, curves: Curves): Problem[] {
  const over = Math.max(...curves.pins.map((p) => Math.abs(p.at[0]) + p.reach)) - curves.profile.crownEnd;
  if (over <= 0) return [];
  const lean = pins.line === 'parallel' ? Math.cos((saddle.angle * Math.PI) / 180) : 1;
  const remedy = 'Narrow the pins’ spread or lengthen the middle block.';
  return [
    tooMuch('pins.spread', pins.spread, pins.spread - (2 * over) / lean, 'in this middle block', remedy),
  ];
}

function pinsApart({ pins, strings }: Design, curves: Curves): Problem[] {
  const gaps = strings.count - 1;
  const wood = Math.min(...neighbours(curves.pins).map(([a, b]) => distance(a.at, b.at) - a.reach - b.reach));
  if (wood >= LEAST_BETWEEN) return [];
  const why = `for ${strings.count} holes of this size`;
  const remedy = 'Widen the pins’ spread, or make bevel, mouth or drill smaller.';
  return [tooLittle('pins.spread', pins.spread, pins.spread + (LEAST_BETWEEN - wood) * gaps, why, remedy)];
}

function neighbours(pins: readonly Pin[]): readonly (readonly [Pin, Pin])[] {
  return pins.slice(1).map((pin, i) => [pins[i] as Pin, pin] as const);
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
  const remedy = 'Move the pins, deepen the footprint behind the slot, or make the holes smaller.';
  return [unfitting('pins.behindSlot', given, fits, why, remedy)];
}

function bevelInWood(design: Design, curves: Curves): Problem[] {
  const p = design.pins;
  if (p.bevel === 'none') return [];
  const flare = Math.tan((p.bevelAngle * Math.PI) / 360);
  const most = p.drill + 2 * flare * (woodAtPins(curves) - 1);
  if (p.bevelDiameter <= most) return [];
  const why = 'or the bevel goes through the wood';
  return [tooMuch('pins.bevelDiameter', p.bevelDiameter, most, why, 'Take a smaller or a flatter bevel.')];
}

/** Least thickness of the uncut bridge at a pin, mm. */
export function woodAtPins({ pins, underside }: Curves): number {
  return Math.min(...pins.map((pin) => pin.top - undersideHeight(underside, pin.at[0], pin.at[1])));
}
