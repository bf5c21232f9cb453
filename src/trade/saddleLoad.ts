const RADIANS = Math.PI / 180;

/** What one string does to its saddle, in the tension's unit. */
export interface SaddleLoad {
  /** V: down on the saddle. */
  readonly down: number;
  /** H: toward the nut, tipping the saddle forward. */
  readonly forward: number;
  /** Both together. */
  readonly resultant: number;
}

/**
 * The load of one string on its saddle from its tension and its two slopes, degrees below the glue plane's direction:
 * B3, V = T(sin t1 + sin t2), H = T(cos t1 − cos t2); B2, resultant = 2T·sin(β/2) with β = t1 + t2. Derived:
 * the string runs over the crown without friction.
 *
 * @param tension N
 * @param front t1, see `frontSlope`
 * @param behind t2, see `breakAngle`
 */
export function saddleLoad(tension: number, front: number, behind: number): SaddleLoad {
  const [t1, t2] = [front * RADIANS, behind * RADIANS];
  return {
    down: tension * (Math.sin(t1) + Math.sin(t2)),
    forward: tension * (Math.cos(t1) - Math.cos(t2)),
    resultant: 2 * tension * Math.sin((t1 + t2) / 2),
  };
}
