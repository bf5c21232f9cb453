import { useMemo, useRef } from 'react';
import type { Problem } from '../../design/problem.ts';
import type { Step } from '../../making/step.ts';
import type { Workshop } from '../../making/workshop.ts';
import type { Accepted } from '../store/judge.ts';
import { jobIn } from './jobIn.ts';

interface ShownJob {
  readonly workshop: Workshop;
  readonly steps: readonly Step[];
}

const NONE: readonly Problem[] = [];

/**
 * The job of a design in the workshop as typed. While the workshop can't be so, `problems` say why, and the job is that
 * in the last workshop that could, or in the usual one.
 */
export function useJob(
  accepted: Accepted,
  typed: Readonly<Record<string, string>>,
): ShownJob & { readonly problems: readonly Problem[] } {
  const good = useRef<Readonly<Record<string, string>>>({});
  const job = useMemo(() => jobIn(accepted, typed), [accepted, typed]);
  if (job.ok) good.current = typed;
  const shown = useMemo(
    () => (job.ok ? job : [good.current, {}].map((one) => jobIn(accepted, one)).find((one) => one.ok)),
    [job, accepted],
  );
  if (!shown) throw new Error('The usual workshop can’t make this design.');
  return { workshop: shown.workshop, steps: shown.steps, problems: job.ok ? NONE : job.problems };
}
