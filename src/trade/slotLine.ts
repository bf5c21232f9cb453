/** A string's place across the bridge and the set-back it asks for, mm; +x to the treble. */
export interface StringPlace {
  readonly xMm: number;
  readonly setbackMm: number;
}

/** Least sum of squares, or smallest largest error (Chebyshev's line). */
export type SlotRule = 'least-squares' | 'smallest-largest';

/** A straight slot: set-backs of its centre line in mm, positive away from the nut. */
export interface SlotLine {
  /** Between slot and x, degrees: positive if the end at −x, the bass, lies farther from the nut. */
  readonly angleDeg: number;
  /** At x = 0, the guitar's centre line. */
  readonly centreMm: number;
  /** At the first string. */
  readonly trebleMm: number;
  /** At the last string. */
  readonly bassMm: number;
  /** What each string asks for beyond the slot's set-back at its x: its crown is to be filed back by this. */
  readonly residualsMm: readonly number[];
}

/** What is set by hand, the other to be solved with it. */
export interface SetSlot {
  readonly angleDeg?: number | undefined;
  readonly centreMm?: number | undefined;
}

/**
 * The straight slot that suits strings, listed treble to bass, best (I4). In a right-handed frame: a left-handed
 * bridge is its mirror image. Of one string, or of several at one x, the angle is 0. Without strings: 0 mm, 0°.
 */
export function slotLine(strings: readonly StringPlace[], rule: SlotRule, set: SetSlot = {}): SlotLine {
  const best = rule === 'least-squares' ? leastSquares : smallestLargest;
  const slope = set.angleDeg === undefined ? undefined : -Math.tan((set.angleDeg * Math.PI) / 180);
  const line = best(strings, slope, set.centreMm);
  const at = (xMm = 0) => line.centre + line.slope * xMm;
  return {
    angleDeg: set.angleDeg ?? (Math.atan(0 - line.slope) * 180) / Math.PI,
    centreMm: line.centre,
    trebleMm: at(strings[0]?.xMm),
    bassMm: at(strings.at(-1)?.xMm),
    residualsMm: strings.map(({ xMm, setbackMm }) => setbackMm - at(xMm)),
  };
}

interface Line {
  readonly slope: number;
  readonly centre: number;
}

function leastSquares(strings: readonly StringPlace[], slope?: number, centre?: number): Line {
  const n = Math.max(strings.length, 1);
  const meanX = strings.reduce((s, { xMm }) => s + xMm, 0) / n;
  const mean = strings.reduce((s, { setbackMm }) => s + setbackMm, 0) / n;
  // about the strings' mean point, or about the point that is set
  const [aboutX, about] = centre === undefined ? [meanX, mean] : [0, centre];
  const xx = strings.reduce((s, { xMm }) => s + (xMm - aboutX) ** 2, 0);
  const xd = strings.reduce((s, { xMm, setbackMm }) => s + (xMm - aboutX) * (setbackMm - about), 0);
  const found = slope ?? (xx > 0 ? xd / xx : 0);
  return { slope: found, centre: centre ?? mean - found * meanX };
}

/**
 * The largest error over the slope is convex and made of straight pieces, whose corners lie where two strings' errors
 * are alike, or (if the centre is set) opposite: the best corner is the answer.
 */
function smallestLargest(strings: readonly StringPlace[], slope?: number, centre?: number): Line {
  let best = { slope: 0, centre: centre ?? 0, error: Number.POSITIVE_INFINITY };
  for (const candidate of slope === undefined ? corners(strings, centre) : [slope]) {
    const flat = strings.map(({ xMm, setbackMm }) => setbackMm - candidate * xMm);
    const [low, high] = [Math.min(...flat), Math.max(...flat)];
    const middle = centre ?? (low + high) / 2;
    const error = Math.max(high - middle, middle - low);
    if (error < best.error) best = { slope: candidate, centre: middle, error };
  }
  return best;
}

function corners(strings: readonly StringPlace[], centre?: number): number[] {
  const found = [0];
  for (const [i, a] of strings.entries()) {
    for (const b of strings.slice(i + 1)) {
      if (a.xMm !== b.xMm) found.push((a.setbackMm - b.setbackMm) / (a.xMm - b.xMm));
      if (centre !== undefined && a.xMm !== -b.xMm)
        found.push((a.setbackMm + b.setbackMm - 2 * centre) / (a.xMm + b.xMm));
    }
    if (centre !== undefined && a.xMm !== 0) found.push((a.setbackMm - centre) / a.xMm);
  }
  return found;
}
