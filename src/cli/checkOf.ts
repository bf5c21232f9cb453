import type { AcceptedDesign } from '../design/acceptDesign.ts';
import type { Finding, Severity } from '../report/findings/finding.ts';
import { findings } from '../report/findings/findings.ts';
import { judgedOf } from '../report/findings/judgedOf.ts';
import { type Remedy, remedyOf } from '../report/findings/remedyOf.ts';

/** What `check` prints of one finding. */
export type FindingCheck = Omit<Finding, 'limitPath'> & {
  readonly limitPath: string | null;
  /** Null when no single number mends it. */
  readonly remedy: Remedy | null;
};

/** What `check` prints of one design. Its help says what every key is. */
export interface DesignCheck {
  readonly name: string;
  readonly counts: Readonly<Record<Severity, number>>;
  readonly findings: readonly FindingCheck[];
}

/** A design held against the trade's rules, each finding with its remedy. */
export function checkOf(accepted: AcceptedDesign): DesignCheck {
  const found = findings(judgedOf(accepted));
  const count = (severity: Severity) => found.filter((one) => one.severity === severity).length;
  return {
    name: accepted.design.guitar.name,
    counts: { error: count('error'), warning: count('warning'), note: count('note') },
    findings: found.map((one) => ({
      ...one,
      limitPath: one.limitPath ?? null,
      remedy: remedyOf(accepted, one) ?? null,
    })),
  };
}
