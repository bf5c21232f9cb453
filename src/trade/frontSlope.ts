const DEGREES = 180 / Math.PI;

/**
 * How much an open string falls from the saddle toward the nut against the glue plane, degrees: the frets' plane's own
 * fall and the string's against the frets. Derived; the front slope t1 of B3 and B4.
 *
 * @param neckAngle of the frets' plane to the glue plane, degrees, positive when it rises toward the bridge
 * @param atNut h0, mm over the frets' plane (see `endHeights`)
 * @param atSaddle hs, mm over the frets' plane
 * @param length nut to saddle along the string, mm
 */
export function frontSlope(neckAngle: number, atNut: number, atSaddle: number, length: number): number {
  return neckAngle + Math.atan((atSaddle - atNut) / length) * DEGREES;
}
