import { madeUp } from '../../making/madeUp.ts';
import type { Measured } from '../../making/meaning.ts';
import type { Step } from '../../making/step.ts';
import type { Accepted } from '../store/judge.ts';
import { measuredIn, type Verdict } from './measuredIn.ts';

export interface JudgedJob {
  /** Of what was typed, all that can be read. */
  readonly measured: Measured;
  /** The saddle's heights as the bridge as measured wants them. */
  readonly steps: readonly Step[];
  readonly verdicts: ReadonlyMap<string, Verdict>;
}

/** A job with what was measured: what is wanted now, and the verdicts by it. */
export function judgedJob(
  accepted: Accepted,
  designed: readonly Step[],
  typed: Readonly<Record<string, string>>,
): JudgedJob {
  const read = [...measuredIn(designed, typed)];
  const measured = Object.fromEntries(read.flatMap(([id, one]) => (one.ok ? [[id, one.value]] : [])));
  const steps = madeUp(designed, accepted, measured);
  return { measured, steps, verdicts: measuredIn(steps, typed) };
}
