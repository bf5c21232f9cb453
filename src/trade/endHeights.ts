import { fretPlace } from '../../models/curves/fretboard.ts';

/** A string's underside over the plane of the fret tops beneath it, mm, at its two ends. */
export interface EndHeights {
  readonly nut: number;
  readonly saddle: number;
}

/** What is measured on the open string, mm: its underside over the tops of two frets. */
export interface Action {
  /** At the 12th fret. */
  readonly at12: number;
  /** At the 1st fret. */
  readonly at1: number;
}

/** Share of the scale from the nut to the first fret: r = 1 − 2^(−1/12). */
const FIRST = fretPlace(1, 1);

/**
 * String heights at nut and saddle from the action, mm. I3, derived: the open string is straight and the
 * 12th fret lies half way, so h0 = (c1 − 2·a12·r)/(1 − 2r) and hs = 2·a12 − h0. A nut height of zero or less means that
 * the string would lie on the frets.
 */
export function endHeights({ at12, at1 }: Action): EndHeights {
  const nut = (at1 - 2 * at12 * FIRST) / (1 - 2 * FIRST);
  return { nut, saddle: 2 * at12 - nut };
}

/** The action that these end heights give, mm: I3 the other way. */
export function actionOf({ nut, saddle }: EndHeights): Action {
  return { at12: (nut + saddle) / 2, at1: nut + (saddle - nut) * FIRST };
}
