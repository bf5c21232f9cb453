/** One string as it stands, and as it is wanted, mm. */
export interface MeasuredAction {
  /** Underside over the 12th fret, measured. */
  readonly measured: number;
  /** The same, wanted. */
  readonly wanted: number;
  /** Height of the saddle now, floor to crown. */
  readonly height: number;
  /** What of it shows now. */
  readonly showing: number;
}

/** What the saddle must become under one string, mm. */
export interface CorrectedSaddle {
  /** Added to the saddle; negative is taken off. */
  readonly change: number;
  readonly height: number;
  readonly showing: number;
}

/**
 * The saddle's height that turns a measured action into the wanted one: twice the difference, as the 12th fret lies half
 * way and the nut stays. dz/d(a12) = 2, derived. A showing of zero or less would put the string on the bridge.
 */
export function correctedSaddle({ measured, wanted, height, showing }: MeasuredAction): CorrectedSaddle {
  const change = 2 * (wanted - measured);
  return { change, height: height + change, showing: showing + change };
}
