import type { MeasuredOff } from './measuredOff.ts';

/** How a bridge's heights came out, mm. */
export interface AsMade {
  /** The block at the middle, more than designed. */
  readonly thicker: number;
  /** The slot along its walls from the crown, more than designed. */
  readonly deeper: number;
  /** The blank between its flat faces, more than set. */
  readonly planed: number;
}

/**
 * A bridge's heights by what was measured last. Where only the depth from the blank's flat face is known, the floor stands
 * so much lower, and the crown decides how deep the slot is under it. What wasn't measured is as designed. Derived.
 *
 * @param tilt the slot's lean, radians
 */
export function asMade(off: MeasuredOff, tilt: number): AsMade {
  const lean = Math.cos(tilt);
  const thicker = off('check.thickness', 'crown.thickness') ?? 0;
  const planed = off('thickness.planed') ?? 0;
  const fromFace = off('slot.depth', 'slot.touch');
  const deeper =
    off('check.slot-depth', 'crown.left-middle') ??
    (fromFace === undefined ? 0 : fromFace + (thicker - planed) / lean);
  return { thicker, deeper, planed };
}
