import { stiffnessFactor } from './endCondition.ts';
import type { IntonationSetup } from './intonationSetup.ts';

/** Cents in one unit of ln. */
export const CENTS_PER_LN = 1200 / Math.LN2;

/** How far the string's ends stand out from the nominal scale, mm: positive makes the string longer. */
export interface Setback {
  readonly saddleMm: number;
  readonly nutMm: number;
}

// many times quicker than Math.hypot, whose care for overflow nothing here needs
const length = (along: number, up: number) => Math.sqrt(along * along + up * up);

/**
 * How sharp a fretted note is against equal temperament from its own open string, cents: I2, after Anderson &
 * Beausoleil, J. Acoust. Soc. Am. 156(1), 683 (2024). Four causes: the length left between fret and saddle, the mass
 * spread over the longer path, the tension that pressing adds, and stiffness, which tells more on a shorter string.
 * (The paper's source prints √(1+κQ) above the line in B_n; the tension's growth makes B smaller, so it stands below.)
 * Set-backs in mm; fret 0 gives 0.
 */
export function centsError(setup: IntonationSetup, fret: number, saddleMm: number, nutMm = 0): number {
  if (fret === 0) return 0;
  const { scaleMm, heights, stretch, bending, clampedEnds } = setup;
  const g = 2 ** (fret / 12);
  const behind = scaleMm / g;
  const open = length(scaleMm + saddleMm + nutMm, heights.saddle - heights.nut);
  const sounding = length(behind + saddleMm, heights.saddle);
  const silent = length(scaleMm - behind + nutMm, heights.nut);
  const longer = (sounding + silent - open) / open;
  const tenser = 1 + stretch * longer;
  const stiffFretted = stiffnessFactor((bending * scaleMm) / (sounding * Math.sqrt(tenser)), clampedEnds);
  const stiffOpen = stiffnessFactor((bending * scaleMm) / open, clampedEnds);
  const stiffening = Math.log(stiffFretted / stiffOpen);
  return (
    CENTS_PER_LN *
    (Math.log(open / (g * sounding)) + Math.log1p(longer) / 2 + Math.log(tenser) / 2 + stiffening)
  );
}

/** The errors at frets 1 to `last`, cents. */
export function centsByFret(setup: IntonationSetup, { saddleMm, nutMm }: Setback, last = 12): number[] {
  return Array.from({ length: last }, (_, i) => centsError(setup, i + 1, saddleMm, nutMm));
}
