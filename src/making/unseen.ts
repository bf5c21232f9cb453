/** Differences that a bench can't measure: mm, or degrees. Own level. */
export const UNSEEN = 0.005;
