/** How near two boundaries must lie to be sewn, mm: no tool shows it, and it is far below any piece's length. */
export const SEAM = 2e-4;

/**
 * How near a boundary's or a band's Bézier piece is asked to come, and how far off it may be at worst, mm: half a seam,
 * since of two neighbours one may stray to either side.
 */
export const FIT = { asked: 1e-7, allowed: SEAM / 2 } as const;
