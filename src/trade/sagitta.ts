import { fretboardDrop } from './fretboardDrop.ts';

/**
 * Height of an arc over its chord, mm: s = R − √(R² − c²/4), for a radius and a chord in mm. Plane geometry.
 *
 * @throws RangeError when the chord is longer than the circle is wide
 */
export function sagitta(radius: number, chord: number): number {
  return fretboardDrop(radius, chord / 2);
}
