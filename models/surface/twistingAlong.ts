import type { Curves, Holes } from '../curves/curves.ts';
import { slicesAlong } from './slicesAlong.ts';
import { stretchIntegral } from './stretchIntegral.ts';

export interface Twisting {
  /** Torsion constant of the sections square to X, x rising from tip to tip. */
  readonly stations: readonly { readonly x: number; readonly torsionMm4: number }[];
  /** At the middle of the bridge's length. */
  readonly middleMm4: number;
  /**
   * By how many degrees the middle turns against the tips, on average of both, for each N·m that strings put in at the
   * middle and glue resists evenly along the length, in a timber whose shear modulus is 1 GPa: divide by the modulus.
   */
  readonly middleToTipsDegGPaPerNm: number;
}

/**
 * An estimate of how stiff the bridge is against the strings' rolling it about its own length, the axis X: Saint-Venant's
 * torsion constant J of each section as a sum of rectangles (standard handbook formulas, from memory), parts of at least
 * half the wood's height as rectangles of their mean height, what joins them under slot or channel as thin strips. A pin
 * hole parts the section that it crosses. Neglected: that the timber's shear modulus differs along and across, that ends
 * and changes hinder warping, the saddle that fills the slot, and the soundboard. To compare designs, no more.
 */
export function twistingAlong(curves: Curves, holes: Holes): Twisting {
  const stations = slicesAlong(curves, holes).map(({ x, torsionMm4 }) => ({ x, torsionMm4 }));
  const [first, last] = [stations[0], stations[stations.length - 1]];
  if (!first || !last) return { stations, middleMm4: 0, middleToTipsDegGPaPerNm: 0 };
  const middle = (first.x + last.x) / 2;
  const length = last.x - first.x;
  const root = (s: { readonly torsionMm4: number }) => Math.cbrt(s.torsionMm4);
  // the couple still in the wood: half of it leaves to either side, and dies away evenly toward the tips
  const turn = stretchIntegral(stations, root, [first.x, last.x], [middle], (x, value) =>
    value > 0 ? (0.5 - Math.abs(x - middle) / length) / value ** 3 : 0,
  );
  let middleMm4 = 0;
  for (let i = 1; i < stations.length; i++) {
    const [a, b] = [stations[i - 1], stations[i]];
    if (!a || !b || b.x < middle) continue;
    const share = (middle - a.x) / (b.x - a.x);
    middleMm4 = (root(a) * (1 - share) + root(b) * share) ** 3;
    break;
  }
  // N·mm over N/mm² cancel; the mean of both sides is half their sum
  return { stations, middleMm4, middleToTipsDegGPaPerNm: ((turn / 2) * 180) / Math.PI };
}
