/** What the guitar shows of one string. Millimetres and cents. */
export interface MeasuredNote {
  /** Scale length, nut to saddle before compensation. */
  readonly scale: number;
  /** Present set-back of the string's crown beyond the scale length. */
  readonly setback: number;
  /** Present set-back of the nut: longer is positive. */
  readonly nutSetback: number;
  /** How sharp the note fretted at the 12th is against the open string's octave; flat is negative. */
  readonly cents: number;
}

/**
 * The set-back that would bring the measured cents at the 12th fret to 0, mm: sharp asks for more, flat for less.
 * Derived, exact for lengths: moving the crown by δ makes the open string L0 + δ and the fretted one L12 + δ, and takes
 * the interval from L0/L12 to their quotient; what stretch and stiffness add is taken to stay as measured. With
 * q = (L0/L12)·2^(−cents/1200), δ = (L0 − q·L12)/(q − 1): about scale·ln 2/1200 a cent, 0.37 mm on 645. Tune the open
 * string again after each change; as stretch and stiffness move a little too, a second measure may be needed.
 *
 * @throws RangeError when the note is so sharp that no place of the saddle cures it: something was misread
 */
export function correctedSetback({ scale, setback, nutSetback, cents }: MeasuredNote): number {
  const open = scale + setback + nutSetback;
  const fretted = scale / 2 + setback;
  const wanted = (open / fretted) * 2 ** (-cents / 1200);
  if (!(wanted > 1)) {
    throw new RangeError(`no set-back brings ${cents} cents at the 12th fret to 0`);
  }
  return setback + (open - wanted * fretted) / (wanted - 1);
}
