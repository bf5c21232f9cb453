import { backwards, enclosedArea } from '../../../models/curves/chain.ts';
import type { Slot } from '../../../models/curves/curves.ts';
import { line } from '../../../models/curves/segment.ts';
import { slotFloor } from '../../../models/curves/slot.ts';
import { saddleMass } from '../saddleMass.ts';
import type { SaddleFit } from './saddleFit.ts';

/**
 * Mass of the saddle that the fit asks for, g, of a material of `density` kg/m³ (bone: `BONE_KG_M3`): its face goes from
 * the slot's floor to its top's curve, a leaning one longer by 1/cos, and it is as wide as the slot. Undefined when there
 * is no such saddle.
 */
export function saddleWeight(slot: Slot, { top, length }: SaddleFit, density: number): number | undefined {
  const [first, last] = [top?.[0], top?.[top.length - 1]];
  if (!top || !first || !last) return undefined;
  const half = length / 2;
  const overMiddle = enclosedArea([
    line([-half, 0], [half, 0]),
    line([half, 0], last.to),
    ...backwards(top),
    line(first.from, [-half, 0]),
  ]);
  const lean = Math.cos(slot.tilt);
  const face = overMiddle / lean + underMiddle(slot.floorRadius, half);
  const ends = [first.from[1], last.to[1]].map((z) => z / lean - slotFloor(slot, half) - slot.depth);
  return saddleMass({ face, width: slot.width, roundEnds: slot.roundEnds ? ends : [] }, density);
}

/** Area between the level of a floor's middle and the floor, which an arc carries down toward the ends, mm². */
function underMiddle(radius: number | undefined, half: number): number {
  if (radius === undefined) return 0;
  return (
    2 * radius * half - half * Math.sqrt(radius ** 2 - half ** 2) - radius ** 2 * Math.asin(half / radius)
  );
}
