import type { Design } from '../../src/design/design.ts';
import { DesignError, misfit, tooLittle, tooMuch } from '../../src/design/problem.ts';
import { handSign } from './slot.ts';

/** Least air between neighbouring strings, mm. */
const LEAST_GAP = 0.5;
/** How much further apart two pairs stand than the strings of one, mm: else they are no pairs. */
const LEAST_BETWEEN_PAIRS = 0.5;

/**
 * x of each string's centre at the saddle, mm, treble first. Equal centres divide the spread; equal gaps leave the
 * same air between neighbours' edges. Pairs stand `pairGap` apart, and it is the pairs that are spread equally. There must be a diameter for each string. Throws
 * `DesignError` when count, spread or diameters don't suit.
 */
export function stringPlaces(design: Design): readonly number[] {
  const { count, spread, courses, spacing, diameters } = design.strings;
  const hand = handSign(design);
  const steps = courses === 'pairs' ? pairSteps(design) : undefined;
  if (spacing === 'centres') {
    const offsets = steps ?? Array.from({ length: count }, (_, i) => (i * spread) / (count - 1));
    return offsets.map((offset) => hand * (spread / 2 - offset));
  }
  const pairs = courses === 'pairs';
  const given = diameters.slice(0, count);
  // within a pair the centres stand as set; everywhere else the air is shared equally
  const fixed = given.slice(1).map((d, i) => {
    const halves = (d + (given[i] ?? d)) / 2;
    return pairs && i % 2 === 0
      ? { step: design.strings.pairGap, shared: false }
      : { step: halves, shared: true };
  });
  const shares = fixed.filter(({ shared }) => shared).length;
  const gap = (spread - fixed.reduce((sum, { step }) => sum + step, 0)) / shares;
  if (gap < LEAST_GAP) {
    const least = spread + (LEAST_GAP - gap) * shares;
    const why = `for ${LEAST_GAP} mm between these strings`;
    const remedy = 'Widen the spread or use fewer strings.';
    throw new DesignError([tooLittle('strings.spread', spread, least, why, remedy)]);
  }
  const places = [spread / 2];
  for (const { step, shared } of fixed) {
    places.push((places[places.length - 1] ?? 0) - step - (shared ? gap : 0));
  }
  return places.map((x) => hand * x);
}

/** Offsets from the first string of strings in pairs: pair centres equally apart. */
function pairSteps({ strings: { count, spread, pairGap } }: Design): readonly number[] {
  if (count % 2 !== 0) {
    const remedy = 'Give an even number of strings, or single courses.';
    throw new DesignError([misfit('strings.count', count, 'an even number, for pairs', remedy)]);
  }
  const pairs = count / 2;
  const apart = (spread - pairGap) / (pairs - 1);
  if (apart < pairGap + LEAST_BETWEEN_PAIRS) {
    const most = (spread - (pairs - 1) * LEAST_BETWEEN_PAIRS) / pairs;
    const why = 'for pairs that stand apart on this spread';
    throw new DesignError([
      tooMuch('strings.pairGap', pairGap, most, why, 'Bring the pairs closer, or widen the spread.'),
    ]);
  }
  return Array.from({ length: count }, (_, i) => Math.floor(i / 2) * apart + (i % 2) * pairGap);
}
