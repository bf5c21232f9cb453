import { CENTS_PER_LN, centsError, type Setback } from './centsError.ts';
import type { IntonationSetup } from './intonationSetup.ts';

/** The frets over which the error is made least. */
export const FRETS: readonly number[] = Array.from({ length: 12 }, (_, i) => i + 1);

/** g − 1 for each fret: how much more a set-back at the saddle flattens the fretted note than the open one. */
const G1 = FRETS.map((fret) => 2 ** (fret / 12) - 1);
const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const [g0, g1, g2] = [FRETS.length, sum(G1), sum(G1.map((g) => g * g))];

/**
 * Set-backs with the least sum of squared errors over frets 1 to 12 by I2's closed form, mm: the error is taken as
 * Z_n − (g−1)·dS/S + dN/S, in ln units, Z_n being the error at dS = dN = 0.
 * `nutMm` 'solved': dS = S(g0·Z1 − g1·Z0)/(g0·g2 − g1²), dN = −S(g2·Z0 − g1·Z1)/(g0·g2 − g1²) (Anderson & Beausoleil
 * 2024). A number: the nut is as it is, Z_n is taken with it, and dS = S·Z1/g2 (derived).
 * Linear in the set-backs, so right to 0.02 mm for 2 mm, but 0.1 mm too long for 6: see `setbackLeastSquares`.
 */
export function setbackClosedForm(setup: IntonationSetup, nutMm: number | 'solved'): Setback {
  const z = FRETS.map((fret) => centsError(setup, fret, 0, nutMm === 'solved' ? 0 : nutMm) / CENTS_PER_LN);
  const z0 = sum(z);
  const z1 = sum(z.map((zn, i) => zn * (G1[i] ?? 0)));
  if (nutMm !== 'solved') return { saddleMm: (setup.scaleMm * z1) / g2, nutMm };
  const all = g0 * g2 - g1 * g1;
  return {
    saddleMm: (setup.scaleMm * (g0 * z1 - g1 * z0)) / all,
    nutMm: (-setup.scaleMm * (g2 * z0 - g1 * z1)) / all,
  };
}
