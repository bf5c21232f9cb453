import { type FitReport, fitReport } from '../../trade/fit/fitReport.ts';
import type { Accepted } from './judge.ts';

const known = new WeakMap<Accepted, FitReport>();

/** What the fit says of a design that can be made. Worked out once for each. */
export function reportOf(accepted: Accepted): FitReport {
  const report = known.get(accepted) ?? fitReport(accepted.design, accepted.curves, accepted.fit);
  known.set(accepted, report);
  return report;
}
