import type { Slot } from '../../../models/curves/curves.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { slotFloor } from '../../../models/curves/slot.ts';

/** A place on one of the slot's long walls, or on the plane between them, cut by a plane x = constant. */
export interface WallPlace {
  /** In the section: y, z. */
  readonly at: Point;
  /** Along the slot. */
  readonly u: number;
}

/**
 * Where the slot's plane `v` mm from its middle passes x at the height z, all mm.
 *
 * @param thickness height of the slot's frame over the glue plane
 */
export function wallAt(slot: Slot, thickness: number, v: number, x: number, z: number): WallPlace {
  const [ct, st] = [Math.cos(slot.tilt), Math.sin(slot.tilt)];
  const w = (z - thickness - v * st) / ct;
  const across = v * ct - w * st;
  const u = (x + across * Math.sin(slot.angle)) / Math.cos(slot.angle);
  return { at: [u * Math.sin(slot.angle) + across * Math.cos(slot.angle), z], u };
}

/** Where the same plane meets the slot's floor at x. */
export function wallFoot(slot: Slot, thickness: number, v: number, x: number): Point {
  let z = thickness - slot.depth;
  // the floor is level or nearly so: it settles at once
  for (let i = 0; i < 6; i++) {
    const { u } = wallAt(slot, thickness, v, x, z);
    z = thickness + v * Math.sin(slot.tilt) + slotFloor(slot, u) * Math.cos(slot.tilt);
  }
  return wallAt(slot, thickness, v, x, z).at;
}
