/** What the walls of a slot bear under one string, in the load's unit; never negative. */
export interface SlotWalls {
  readonly front: number;
  readonly back: number;
  /** Tipped forward, a saddle bears on the front wall's mouth and the back wall's foot; tipped back, the other way. */
  readonly tips: 'forward' | 'back';
}

/**
 * How a saddle is held in its slot: B7, the wall toward which it is tipped bears H′(1 + e/d) at its mouth, the other H′·e/d
 * at its foot. Derived: equilibrium of a rigid saddle that is a little loose, without friction; the slot's floor bears
 * what runs along the saddle.
 *
 * @param square H′, the load square to the saddle, toward the nut (see `squareToSaddle`)
 * @param showing e, along the saddle, mm
 * @param inSlot d, along the saddle, mm
 * @throws RangeError when nothing of the saddle is in the slot, or nothing shows of it
 */
export function slotWalls(square: number, showing: number, inSlot: number): SlotWalls {
  if (!(inSlot > 0 && showing >= 0)) {
    throw new RangeError(`a saddle stands in its slot and shows: ${inSlot} mm in it, ${showing} mm over it`);
  }
  const load = Math.abs(square);
  const mouth = load * (1 + showing / inSlot);
  const foot = (load * showing) / inSlot;
  return square >= 0
    ? { front: mouth, back: foot, tips: 'forward' }
    : { front: foot, back: mouth, tips: 'back' };
}
