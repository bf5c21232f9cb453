import { centsError, type Setback } from './centsError.ts';
import type { IntonationSetup } from './intonationSetup.ts';
import { FRETS, setbackClosedForm } from './setbackClosedForm.ts';

/** Step of the central differences, mm: their error is far below what the last step leaves. */
const STEP_MM = 1e-3;

/** The closed form is 0.3 mm away at most: from there two steps come within 1e-6 mm. */
const STEPS = 2;

/**
 * Set-backs with the least sum of squared errors over frets 1 to 12, mm (I4's second rule): I2 itself, not its linear
 * form, by Gauss and Newton's steps from `setbackClosedForm`. `nutMm` as there.
 */
export function setbackLeastSquares(setup: IntonationSetup, nutMm: number | 'solved'): Setback {
  let at = setbackClosedForm(setup, nutMm);
  for (let step = 0; step < STEPS; step++) at = improved(setup, at, nutMm === 'solved');
  return at;
}

function improved(setup: IntonationSetup, { saddleMm, nutMm }: Setback, nutToo: boolean): Setback {
  // sums of the normal equations: s and n are the error's slopes by saddle and nut, e the error
  let [ss, sn, nn, se, ne] = [0, 0, 0, 0, 0];
  for (const fret of FRETS) {
    const error = (ds: number, dn: number) => centsError(setup, fret, saddleMm + ds, nutMm + dn);
    const e = error(0, 0);
    const s = (error(STEP_MM, 0) - error(-STEP_MM, 0)) / (2 * STEP_MM);
    const n = nutToo ? (error(0, STEP_MM) - error(0, -STEP_MM)) / (2 * STEP_MM) : 0;
    ss += s * s;
    sn += s * n;
    nn += n * n;
    se += s * e;
    ne += n * e;
  }
  if (!nutToo) return { saddleMm: saddleMm - se / ss, nutMm };
  const all = ss * nn - sn * sn;
  return { saddleMm: saddleMm - (nn * se - sn * ne) / all, nutMm: nutMm - (ss * ne - sn * se) / all };
}
