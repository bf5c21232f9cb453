/** The glued face of a bridge, as it bears the strings. */
export interface GlueFace {
  readonly areaMm2: number;
  /** ∫y² about the line along the bridge through its centroid. */
  readonly secondMm4: number;
  /** From the centroid to the edge nearest to the tail, and to the one nearest to the nut. */
  readonly toBackMm: number;
  readonly toFrontMm: number;
}

/** What the glue bears, MPa. */
export interface GlueLoad {
  /** Mean over the face, toward the nut. */
  readonly shear: number;
  /** Pull at the edge toward the tail: the strings tip the bridge forward, so that this edge lifts. */
  readonly peel: number;
  /** Pressure at the edge toward the nut. */
  readonly press: number;
}

/**
 * The glue's load as of two rigid bodies: B6, mean shear ΣT/A and, from the couple of B1, peel M·c/I. Derived. The ball
 * ends, which press the soundboard to the bridge from beneath, are left out. For comparing designs only: there is no
 * strength here to hold it against.
 *
 * @param pullN all strings together
 * @param coupleNm see `stringCouple`
 * @throws RangeError when the face has no area or no second moment
 */
export function glueLoad(pullN: number, coupleNm: number, face: GlueFace): GlueLoad {
  if (!(face.areaMm2 > 0 && face.secondMm4 > 0)) {
    throw new RangeError(`a glue face needs an area: ${face.areaMm2} mm², ${face.secondMm4} mm⁴`);
  }
  const bending = (coupleNm * 1000) / face.secondMm4;
  return {
    shear: pullN / face.areaMm2,
    peel: bending * face.toBackMm,
    press: bending * face.toFrontMm,
  };
}
