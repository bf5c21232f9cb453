/** The string's height over the plane of the fret tops at the two ends of the scale, mm: I2's h0 and hs. */
export interface ActionHeights {
  readonly nutMm: number;
  readonly saddleMm: number;
}

/** How far along the scale the first fret lies: r = 1 − 2^(−1/12). */
const FIRST_FRET = 1 - 2 ** (-1 / 12);

/**
 * Heights at nut and saddle from what a builder measures: the open string's clearance over the first fret and its
 * action over the twelfth, mm. I3 (derived): the open string is straight, so with r the first fret's share of the
 * scale, h0 = (c1 − 2·a12·r)/(1 − 2r) and hs = 2·a12 − h0.
 */
export function actionHeights(clearanceAt1Mm: number, actionAt12Mm: number): ActionHeights {
  const nutMm = (clearanceAt1Mm - 2 * actionAt12Mm * FIRST_FRET) / (1 - 2 * FIRST_FRET);
  return { nutMm, saddleMm: 2 * actionAt12Mm - nutMm };
}
