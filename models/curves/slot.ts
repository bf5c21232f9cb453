import type { Design } from '../../src/design/design.ts';
import type { Profile, Slot } from './curves.ts';
import { arc, type Chain, line, type Point } from './segment.ts';

/** +1 right-handed, −1 left-handed: a left-handed design mirrors X. */
export function handSign(design: Design): 1 | -1 {
  return design.guitar.hand === 'left' ? -1 : 1;
}

/** The saddle slot in its own frame (see `Slot`). */
export function slot(design: Design, profile: Profile): Slot {
  const { saddle } = design;
  const roundEnds = saddle.ends === 'round';
  const angle = (handSign(design) * saddle.angle * Math.PI) / 180;
  // an open slot is cut on to where the wing's run begins: beyond the block there is only air over its floor
  const halfLength = roundEnds ? saddle.slotLength / 2 : profile.runStart / Math.cos(angle);
  return {
    angle,
    tilt: (saddle.tilt * Math.PI) / 180,
    width: saddle.slotWidth,
    halfLength,
    roundEnds,
    depth: saddle.depth,
    floorRadius: saddle.floor === 'parallel' ? profile.crownRadius : undefined,
    plan: roundEnds ? stadium(halfLength, saddle.slotWidth / 2) : rectangle(halfLength, saddle.slotWidth / 2),
  };
}

function stadium(halfLength: number, r: number): Chain {
  const h = halfLength - r;
  return [
    line([-h, -r], [h, -r]),
    arc([h, -r], [h, r], [h, 0], 1),
    line([h, r], [-h, r]),
    arc([-h, r], [-h, -r], [-h, 0], 1),
  ];
}

function rectangle(halfLength: number, r: number): Chain {
  const p: readonly [Point, Point, Point, Point] = [
    [-halfLength, -r],
    [halfLength, -r],
    [halfLength, r],
    [-halfLength, r],
  ];
  return [line(p[0], p[1]), line(p[1], p[2]), line(p[2], p[3]), line(p[3], p[0])];
}

/** What of a slot its frame and floor need. */
export type SlotFrame = Pick<Slot, 'angle' | 'tilt' | 'depth' | 'floorRadius'>;

/** Height of the slot's floor in its own frame at u along it, mm (negative: below the crown's top). */
export function slotFloor(s: SlotFrame, u: number): number {
  return s.floorRadius === undefined
    ? -s.depth
    : -s.depth - (u * u) / (s.floorRadius + Math.sqrt(s.floorRadius ** 2 - u * u));
}

/** Height of the slot's floor over the glue plane where the slot's middle passes x, mm. `thickness` as for `slotToPart`. */
export function floorOver(s: SlotFrame, thickness: number, x: number): number {
  return thickness + slotFloor(s, x / Math.cos(s.angle)) * Math.cos(s.tilt);
}

/** A point of the slot's frame in the part, mm. `thickness` is the crown's height at the origin. */
export function slotToPart(
  s: SlotFrame,
  thickness: number,
  u: number,
  v: number,
  w: number,
): readonly [number, number, number] {
  const across = v * Math.cos(s.tilt) - w * Math.sin(s.tilt);
  const up = v * Math.sin(s.tilt) + w * Math.cos(s.tilt);
  return [
    u * Math.cos(s.angle) - across * Math.sin(s.angle),
    u * Math.sin(s.angle) + across * Math.cos(s.angle),
    thickness + up,
  ];
}
