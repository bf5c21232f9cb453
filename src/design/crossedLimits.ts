import type { Design } from './design.ts';
import { limits as FIELDS } from './fields/limits.ts';
import { misfit, type Problem } from './problem.ts';

/** Limits between which a number must lie, least and most. */
const PAIRS = [
  ['showingLeast', 'showingMost', 'mm'],
  ['stringLeast', 'stringMost', 'mm'],
  ['gapLeast', 'gapMost', 'mm'],
  ['tipLeast', 'tipMost', 'mm'],
  ['massLeast', 'massMost', 'g'],
] as const satisfies readonly (readonly [keyof typeof FIELDS, keyof typeof FIELDS, string])[];

/** Limits of the design's own of which the least is above the most: no bridge could lie between. */
export function crossedLimits({ limits }: Design): readonly Problem[] {
  return PAIRS.flatMap(([least, most, unit]) => {
    if (limits[least] <= limits[most]) return [];
    const allowed = `at most ${limits[most]} ${unit}, the “${FIELDS[most].label}”`;
    const remedy = `Lower it, or raise “${FIELDS[most].label}”.`;
    return [misfit(`limits.${least}`, limits[least], allowed, remedy)];
  });
}
