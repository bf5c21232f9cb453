import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { type FitReport, fitReport } from '../../trade/fit/fitReport.ts';
import { woodMass } from '../woodMass.ts';
import type { Judged } from './finding.ts';

/** What the rules judge an accepted design by. Its mass is worked out when a rule first asks for it, and once. */
export function judgedOf(
  accepted: AcceptedDesign,
  report: FitReport = fitReport(accepted.design, accepted.curves, accepted.fit),
): Judged {
  let mass: number | undefined;
  return {
    accepted,
    report,
    get massG() {
      mass ??= woodMass(accepted.design, accepted.curves, 'reamed');
      return mass;
    },
  };
}
