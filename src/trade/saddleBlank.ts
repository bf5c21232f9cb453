import { roundedUp } from './roundedUp.ts';

/** Looseness of the saddle across the slot that is still firm, mm: slides in by hand and doesn't lean. Practice. */
const FIT = 0.05;
/** Air that may be left at the slot's two ends together, mm. Practice. */
const END_AIR = 0.5;
/** What is added in height for levelling the underside and shaping the crown, mm. Practice. */
const TO_SHAPE = 0.5;

/** Least and greatest of a dimension, mm. */
export interface Limits {
  readonly least: number;
  readonly most: number;
}

/** The piece to cut a saddle from, mm. */
export interface SaddleBlank {
  readonly length: Limits;
  readonly thickness: Limits;
  /** The least height, rounded up to a hundredth; whatever is more comes off in shaping. */
  readonly height: number;
  /** Height of the finished saddle at its highest. */
  readonly finished: number;
}

/**
 * The blank for a saddle: as long and thick as its slot less a fit that is common practice, and higher than the finished
 * saddle by what shaping takes (practice). A slot's fit needs limits of its own, general tolerances are too wide.
 *
 * @param slotLength overall, mm; for an open slot the length of the block where it runs out
 * @param slotWidth mm
 * @param greatest height of the finished saddle (see `greatestHeight`), mm
 */
export function saddleBlank(slotLength: number, slotWidth: number, greatest: number): SaddleBlank {
  return {
    length: { least: slotLength - END_AIR, most: slotLength },
    thickness: { least: slotWidth - FIT, most: slotWidth },
    height: roundedUp(greatest + TO_SHAPE, 2),
    finished: greatest,
  };
}
