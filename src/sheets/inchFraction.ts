/** Finest fraction on a rule. */
const PARTS = 64;
/** How near a length must be to a fraction to be it, inches. */
const SAME = 1e-5;

/** Inches as `3/16` or `1 1/2` where a length is one of 64ths, or undefined; whole inches as `300`. @param mm */
export function inchFraction(mm: number): string | undefined {
  const inches = Math.abs(mm) / 25.4;
  const parts = Math.round(inches * PARTS);
  if (Math.abs(parts / PARTS - inches) > SAME) return undefined;
  const sign = mm < 0 && parts > 0 ? '−' : '';
  const whole = Math.floor(parts / PARTS);
  let [above, below] = [parts % PARTS, PARTS];
  if (above === 0) return `${sign}${whole}`;
  while (above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  return `${sign}${whole === 0 ? '' : `${whole} `}${above}/${below}`;
}
