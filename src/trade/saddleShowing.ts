/**
 * The thickness at the centre that makes the saddle show so much there, mm: t = p + hs(0) − showing. Derived.
 * At the middle, not as a mean over the strings: there the crown's radius has no part in it, and there a builder
 * measures both. Where the crown is the fretboard's own arc the mean over evenly placed strings is the same.
 *
 * @param fretPlane p (see `fretPlaneHeight`), mm
 * @param overFrets strings' height over the frets' plane on the centre line (`middleOf` their hs), mm
 */
export function thicknessForShowing(fretPlane: number, overFrets: number, showing: number): number {
  return fretPlane + overFrets - showing;
}

/** What shows at the middle when the thickness is given, mm: `thicknessForShowing` the other way. */
export function showingForThickness(fretPlane: number, overFrets: number, thickness: number): number {
  return fretPlane + overFrets - thickness;
}
