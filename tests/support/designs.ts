import fc from 'fast-check';
import { type AcceptedDesign, acceptDesign } from '../../src/design/acceptDesign.ts';
import type { DesignText } from '../../src/design/design.ts';
import { DesignError } from '../../src/design/problem.ts';
import { type Draw, Draws, PATHS } from './draws.ts';
import { plausible } from './plausible.ts';

const draw: fc.Arbitrary<Draw> = fc.record({
  where: fc.oneof(
    { weight: 970, arbitrary: fc.constant<'near'>('near') },
    { weight: 14, arbitrary: fc.constant<'any'>('any') },
    { weight: 8, arbitrary: fc.constant<'least'>('least') },
    { weight: 8, arbitrary: fc.constant<'most'>('most') },
  ),
  share: fc.integer({ min: 0, max: 100_000 }).map((n) => n / 100_000),
  written: fc.constantFrom<Draw['written'][]>('bare', 'stepped', 'stepped', 'unit', 'inches', 'fraction'),
  text: fc
    .string({ unit: 'grapheme', minLength: 1, maxLength: 40 })
    .map((text) => (text.trim() === '' ? 'x' : text)),
});

/**
 * Any design that a person could type: every field of the table over its whole range, both ends included, and every
 * choice; lengths now and then in inches or fractions. About half of them can be made.
 */
export function anyDesign(): fc.Arbitrary<DesignText> {
  // bias toward the ends of each draw would put most designs out of reach: the draws have their own ends
  return fc
    .noBias(fc.tuple(...PATHS.map(() => draw)))
    .map((draws) => plausible(new Draws(new Map(draws.map((one, i) => [PATHS[i] ?? '', one])))));
}

/** What became of a list of random designs. */
export interface Sample {
  readonly accepted: readonly AcceptedDesign[];
  readonly asked: number;
  /** `code path` → how many designs were refused with it (a design may be refused for several reasons). */
  readonly refusals: ReadonlyMap<string, number>;
}

/** The first `count` random designs that validation accepts, the same for the same seed, and why others were refused. */
export function acceptedDesigns(count: number, seed: number): Sample {
  const accepted: AcceptedDesign[] = [];
  const refusals = new Map<string, number>();
  let asked = 0;
  for (const text of fc.sample(anyDesign(), { numRuns: 5 * count + 60, seed })) {
    if (accepted.length === count) break;
    asked++;
    try {
      accepted.push(acceptDesign(text));
    } catch (error) {
      if (!(error instanceof DesignError)) throw error;
      for (const reason of new Set(error.problems.map((p) => `${p.code} ${p.path}`)))
        refusals.set(reason, (refusals.get(reason) ?? 0) + 1);
    }
  }
  if (accepted.length < count) throw new Error(`only ${accepted.length} of ${asked} designs were accepted`);
  return { accepted, asked, refusals };
}
