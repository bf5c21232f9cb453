/** How a saddle stands in its slot under one string, mm, along the saddle's own (perhaps tilted) height. */
export interface SaddleStand {
  /** Over the bridge's top. */
  readonly showing: number;
  /** From the top down to the slot's floor. */
  readonly inSlot: number;
  /** Floor to crown. */
  readonly height: number;
}

/**
 * How the saddle stands under one string, from three heights over the glue plane there, mm: the string's underside, the
 * bridge's top and the slot's floor: height = showing + in slot.
 *
 * @param tilt the slot's lean toward the pins, degrees: a leaning saddle is longer than it is high, by 1/cos
 */
export function saddleStand(underside: number, top: number, floor: number, tilt: number): SaddleStand {
  const lean = Math.cos((tilt * Math.PI) / 180);
  const showing = (underside - top) / lean;
  const inSlot = (top - floor) / lean;
  return { showing, inSlot, height: showing + inSlot };
}

/** A millionth of a millimetre: a saddle that is held as wanted by design must not fail by rounding. */
const ROUNDING = 1e-6;

/** Whether a share of the saddle stands in the slot; a half is common practice. What doesn't show needs no hold. */
export function isHeld({ showing, inSlot, height }: SaddleStand, share: number): boolean {
  return showing <= 0 || inSlot >= share * height - ROUNDING;
}
