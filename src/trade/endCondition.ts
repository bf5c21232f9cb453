/**
 * How firmly the two ends of a sounding string are held, counted in clamped ends: 0 both pinned, 1 one clamped, 2 both.
 * Numbers between are calibrations. Nobody has settled it for steel strings: on nylon about 1.1 was measured (Anderson
 * & Beausoleil 2024); with 2, set-backs and angle come out as builders make them; 1 is a lower bound.
 */
export type ClampedEnds = number;

/** The default: fitted to common practice, 2 to 3 mm of set-back at the treble, 5 to 6 at the bass, 2.5 to 3.5°. */
export const PRACTICE_CLAMPED_ENDS: ClampedEnds = 2;

/** Shown beside the default as a lower bound. */
export const LEAST_CLAMPED_ENDS: ClampedEnds = 1;

/**
 * What stiffness multiplies a string's fundamental by: I2's F(B) = 1 + αB + c₂B², B = √(EI/(TL²)) without unit. c₂ is
 * π²/2, 1 + π²/2 and 4 + π²/2 for α = 0, 1 and 2, which α² + π²/2 joins. Within 0.05 cent while B is below 0.01.
 */
export function stiffnessFactor(b: number, clampedEnds: ClampedEnds): number {
  return 1 + clampedEnds * b + (clampedEnds ** 2 + Math.PI ** 2 / 2) * b * b;
}
