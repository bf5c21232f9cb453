import { DesignError, mend } from '../../design/problem.ts';
import { isMeasured } from '../../making/isMeasured.ts';
import { type Judgement, judgeMeasured } from '../../making/judgeMeasured.ts';
import { readMeasured } from '../../making/readMeasured.ts';
import type { Setting, Step } from '../../making/step.ts';

/** A measured value as typed, judged; or what is wrong with what was typed. */
export type Verdict =
  | { readonly ok: true; readonly value: number; readonly judgement: Judgement }
  | { readonly ok: false; readonly words: string };

/**
 * The verdicts on measured values, by the id of their setting. What was measured for settings that this job doesn't have
 * (another tool was chosen) is left out, and what is blank.
 */
export function measuredIn(
  steps: readonly Step[],
  typed: Readonly<Record<string, string>>,
): ReadonlyMap<string, Verdict> {
  const verdicts = new Map<string, Verdict>();
  for (const step of steps) {
    for (const setting of step.settings) {
      const said = typed[setting.id];
      if (said === undefined || said.trim() === '' || !isMeasured(setting, step)) continue;
      verdicts.set(setting.id, verdictOn(setting, said, step));
    }
  }
  return verdicts;
}

function verdictOn(setting: Setting, typed: string, step: Step): Verdict {
  try {
    const value = readMeasured({ [setting.id]: typed }, [step])[setting.id] as number;
    return { ok: true, value, judgement: judgeMeasured(setting, value) };
  } catch (error) {
    if (!(error instanceof DesignError)) throw error;
    return { ok: false, words: error.problems.map(mend).join(' ') };
  }
}
