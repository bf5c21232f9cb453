import { centsError, type Setback } from './centsError.ts';
import type { IntonationSetup } from './intonationSetup.ts';

/**
 * The set-back at the saddle with which one fret, the twelfth, is in tune (I4's first rule), with the nut's set-back
 * given: the root of I2 in dS, found by secants to 1e-10 mm. The error falls almost linearly with dS, so four or five
 * steps do; where there is no root (figures beyond reason) the last step stands.
 */
export function setbackInTune(setup: IntonationSetup, nutMm = 0, fret = 12): Setback {
  const cents = (saddleMm: number) => centsError(setup, fret, saddleMm, nutMm);
  let [a, atA] = [0, cents(0)];
  let b = setup.scaleMm / 200;
  for (let step = 0; step < 30; step++) {
    const atB = cents(b);
    const next = atB === atA ? b : b - (atB * (b - a)) / (atB - atA);
    [a, atA, b] = [b, atB, next];
    if (Math.abs(b - a) < 1e-10) break;
  }
  return { saddleMm: b, nutMm };
}
