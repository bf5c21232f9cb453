import type { Design } from '../../src/design/design.ts';

/** Distance of fret n from the nut on a scale S, mm: S·(1 − 2^(−n/12)), equal temperament. */
export function fretPlace(scale: number, fret: number): number {
  return scale * (1 - 2 ** (-fret / 12));
}

/**
 * Fretboard radius carried on to `fromNut` mm, along the cone through the two measured radii:
 * R(y) = R0 + (R1 − R0)·y/y1, y1 the place of the second.
 */
export function fretboardRadius(guitar: Design['guitar'], fromNut: number): number {
  if (guitar.fretboard === 'constant') return guitar.fretboardRadius;
  const far = fretPlace(guitar.scale, guitar.fretboardFret);
  return guitar.fretboardRadius + ((guitar.fretboardRadiusAtFret - guitar.fretboardRadius) * fromNut) / far;
}
