import { type BridgeParts, partsAlong } from '../../../models/surface/partsAlong.ts';
import { type PartFigures, partFigures } from '../../report/partFigures.ts';
import type { Accepted } from '../store/judge.ts';
import { reportOf } from '../store/reportOf.ts';

/** All figures of a design, and of the lengths that it is made of, pin holes reamed. */
export interface Weighed {
  readonly accepted: Accepted;
  readonly figures: PartFigures;
  readonly parts: BridgeParts;
}

const known = new WeakMap<Accepted, Weighed>();

/** What a design that can be made comes to. Worked out once for each. */
export function figuresOf(accepted: Accepted): Weighed {
  const { curves, design } = accepted;
  const weighed = known.get(accepted) ?? {
    accepted,
    figures: partFigures(accepted, reportOf(accepted)),
    parts: partsAlong(curves, 'reamed', design.top.block),
  };
  known.set(accepted, weighed);
  return weighed;
}
