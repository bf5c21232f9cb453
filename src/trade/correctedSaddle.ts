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
  /** How the saddle leans toward the pins, degrees: height and showing go along it. */
  readonly tilt: number;
}

/** What the saddle must become under one string, mm, along the saddle. */
export interface CorrectedSaddle {
  /** Added to the saddle; negative is taken off. */
  readonly change: number;
  /** How much higher the crown stands then, straight up. */
  readonly rise: number;
  readonly height: number;
  readonly showing: number;
}

/**
 * The saddle's height that turns a measured action into the wanted one: twice the difference, as the 12th fret lies half
 * way and the nut stays. dz/d(a12) = 2, derived; a leaning saddle changes by 1/cos of its tilt more than its crown rises.
 * A showing of zero or less would put the string on the bridge.
 */
export function correctedSaddle({
  measured,
  wanted,
  height,
  showing,
  tilt,
}: MeasuredAction): CorrectedSaddle {
  const rise = 2 * (wanted - measured);
  const change = rise / Math.cos((tilt * Math.PI) / 180);
  return { change, rise, height: height + change, showing: showing + change };
}
