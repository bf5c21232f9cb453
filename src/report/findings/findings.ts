import type { Finding, Judged, Severity } from './finding.ts';
import type { About } from './rule.ts';
import { RULES } from './rules.ts';

const ORDER: readonly Severity[] = ['error', 'warning', 'note'];

/** Everything the trade's rules say of a design, errors first; within a severity in the rules' order. */
export function findings(judged: Judged, about?: About): readonly Finding[] {
  const found = RULES.filter((rule) => about === undefined || rule.about === about).flatMap(
    (rule) => rule.judge(judged) ?? [],
  );
  return ORDER.flatMap((severity) => found.filter((finding) => finding.severity === severity));
}
