import type { Finding } from '../../report/findings/finding.ts';
import { findings } from '../../report/findings/findings.ts';
import { judgedOf } from '../../report/findings/judgedOf.ts';
import type { Accepted } from './judge.ts';
import { reportOf } from './reportOf.ts';

const known = new WeakMap<Accepted, readonly Finding[]>();

/** What the trade's rules say of a design that can be made. Worked out once for each. */
export function findingsOf(accepted: Accepted): readonly Finding[] {
  const found = known.get(accepted) ?? findings(judgedOf(accepted, reportOf(accepted)));
  known.set(accepted, found);
  return found;
}
