/**
 * How hard one string presses on the front of its pin hole, MPa: an estimate, derived.
 *
 * The string comes over the hole's edge sloping down at t2 and goes straight down beside its pin to the ball. Without
 * friction it pulls that edge by T·cos t2 toward the nut and presses it down by T(1 − sin t2). Assumed: string and pin,
 * which fill the hole, hand the pull toward the nut on to the whole front wall evenly, as a bolt does, over the hole's
 * diameter × the wood's thickness. In truth the mouth bears most: a string alone on an edge cuts in. It acts across the
 * grain, and pin holes stand along it.
 *
 * @param tension T, N
 * @param behind t2, degrees (see `breakAngle`)
 * @param diameter of the hole half way down, mm: of a taper that is its mean
 * @param thickness of the wood at the hole, mm
 * @throws RangeError when there is no wood or no hole
 */
export function pinBearing(tension: number, behind: number, diameter: number, thickness: number): number {
  if (!(diameter > 0 && thickness > 0)) throw new RangeError(`a hole of ${diameter} mm in ${thickness} mm`);
  return (tension * Math.cos((behind * Math.PI) / 180)) / (diameter * thickness);
}
