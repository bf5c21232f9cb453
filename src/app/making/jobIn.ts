import { DesignError, type Problem } from '../../design/problem.ts';
import { jobByHand } from '../../making/jobByHand.ts';
import type { Step } from '../../making/step.ts';
import { readWorkshop, usualWorkshop, type Workshop } from '../../making/workshop.ts';
import type { Accepted } from '../store/judge.ts';

export type JobInWorkshop =
  | { readonly ok: true; readonly workshop: Workshop; readonly steps: readonly Step[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The job of a design in the workshop as typed; what is left out is as usual, the cutter the widest that fits the slot. */
export function jobIn(accepted: Accepted, typed: Readonly<Record<string, string>>): JobInWorkshop {
  try {
    const { cutter } = usualWorkshop(accepted.design.saddle.slotWidth);
    const workshop = readWorkshop({ cutter, ...typed });
    return { ok: true, workshop, steps: jobByHand(accepted, workshop) };
  } catch (error) {
    if (!(error instanceof DesignError)) throw error;
    return { ok: false, problems: error.problems };
  }
}
