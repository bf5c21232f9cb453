/** What says how high a string stands over the saddle line, mm. */
export interface StringOverSaddle {
  /** p: the fret plane over the glue plane on the centre line (see `fretPlaneHeight`). */
  readonly fretPlane: number;
  /** How far the fretboard, carried on to the saddle, has fallen under this string (see `fretboardDrop`). */
  readonly drop: number;
}

/**
 * z: a string's underside over the glue plane at the saddle, mm, from its height over the frets there (hs of
 * `endHeights`): z = p − drop(x) + hs. Derived. As hs = 2·a12 − h0, half a millimetre more of action is a
 * millimetre of saddle.
 */
export function stringUnderside(at: StringOverSaddle, overFrets: number): number {
  return at.fretPlane - at.drop + overFrets;
}
