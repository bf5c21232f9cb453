import { figuresOf } from '../../../src/app/figures/figuresOf.ts';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import type { Weighed } from '../../../src/report/compare/comparison.ts';
import { type Changes, change } from '../../support/change.ts';

/** What the initial design, everything solved, with some fields changed, comes to. */
export function weighed(changes: Changes = {}): Weighed {
  return figuresOf(acceptDesign(change(initialDesign(), changes)));
}
