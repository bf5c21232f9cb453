import type { Design } from '../../src/design/design.ts';
import { DesignError, misfit, tooLittle } from '../../src/design/problem.ts';
import { handSign } from './slot.ts';

/** Least air between neighbouring strings, mm. */
const LEAST_GAP = 0.5;

/**
 * x of each string's centre at the saddle, mm, treble first. Equal centres divide the spread; equal gaps leave the
 * same air between neighbours' edges. Throws `DesignError` when the diameters don't suit.
 */
export function stringPlaces(design: Design): readonly number[] {
  const { count, spread, spacing, diameters } = design.strings;
  const hand = handSign(design);
  if (spacing === 'centres') {
    return Array.from({ length: count }, (_, i) => hand * (spread / 2 - (i * spread) / (count - 1)));
  }
  if (diameters.length !== count) {
    throw new DesignError([
      misfit(
        'strings.diameters',
        `${diameters.length} ${diameters.length === 1 ? 'diameter' : 'diameters'}`,
        `one for each of ${count} strings`,
        'Give as many diameters as strings, treble first, or use equal centres.',
      ),
    ]);
  }
  const halves = diameters.slice(1).map((d, i) => (d + (diameters[i] ?? d)) / 2);
  const gap = (spread - halves.reduce((a, b) => a + b, 0)) / (count - 1);
  if (gap < LEAST_GAP) {
    const least = spread + (LEAST_GAP - gap) * (count - 1);
    const why = `for ${LEAST_GAP} mm between these strings`;
    const remedy = 'Widen the spread or use fewer strings.';
    throw new DesignError([tooLittle('strings.spread', spread, least, why, remedy)]);
  }
  const places = [spread / 2];
  for (const half of halves) places.push((places[places.length - 1] ?? 0) - half - gap);
  return places.map((x) => hand * x);
}
