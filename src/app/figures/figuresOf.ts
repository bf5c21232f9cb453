import type { Weighed } from '../../report/compare/comparison.ts';
import { partFigures } from '../../report/partFigures.ts';
import type { Accepted } from '../store/judge.ts';
import { reportOf } from '../store/reportOf.ts';

const known = new WeakMap<Accepted, Weighed>();

/** What a design that can be made comes to. Worked out once for each. */
export function figuresOf(accepted: Accepted): Weighed {
  const weighed = known.get(accepted) ?? { accepted, figures: partFigures(accepted, reportOf(accepted)) };
  known.set(accepted, weighed);
  return weighed;
}
