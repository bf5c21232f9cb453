/**
 * Outside diameter and core of wound strings, in thousandths of an inch. Assumed: makers don't print cores. They are
 * plausible (practice), and the slot's angle moves by a degree with them, so a measured core is better.
 */
const ASSUMED: readonly (readonly [outside: number, core: number])[] = [
  [24, 11],
  [32, 14],
  [42, 16],
  [53, 18],
];

/** Thousandths of an inch to which an assumed core is rounded: more would look like knowledge. */
const STEP = 0.5;

/**
 * Core diameter to assume for a wound string of this outside diameter, both in thousandths of an inch: between the
 * assumed pairs in proportion, and beyond them on along the last two.
 */
export function assumedCore(outside: number): number {
  const upper = ASSUMED.findIndex(([d], i) => i > 0 && (outside <= d || i === ASSUMED.length - 1));
  const [low, high] = [ASSUMED[upper - 1], ASSUMED[upper]];
  if (!low || !high) return outside / 2;
  const core = low[1] + ((outside - low[0]) * (high[1] - low[1])) / (high[0] - low[0]);
  return Math.round(core / STEP) * STEP;
}
