/**
 * Distance from the nut to a fret in equal temperament, in the unit of the scale: I1, x_n = S(1 − 2^(−n/12)).
 * Fret 0 is the nut.
 */
export function fretPlace(scale: number, fret: number): number {
  return scale * (1 - 2 ** (-fret / 12));
}
