import { type AcceptedDesign, acceptDesign } from '../../design/acceptDesign.ts';
import type { DesignText } from '../../design/design.ts';
import { DesignError } from '../../design/problem.ts';
import type { Finding, Judged } from './finding.ts';
import { judgedOf } from './judgedOf.ts';
import { RULES } from './rules.ts';
import { volumeEstimate } from './volumeEstimate.ts';

/**
 * What a changed design is worth: the finding is gone and nothing is worse (`clean`); it is gone at a price, a new warning
 * or another action (`priced`); it is gone with a new error (`worse`); it stays; or the design can't be made.
 */
export type Worth = 'clean' | 'priced' | 'worse' | 'stays' | 'refused';

/** What became of a change. */
export interface Outcome {
  readonly worth: Worth;
  /** New warnings, and that the action comes out otherwise: what it costs. */
  readonly price: readonly Finding[];
}

/** Tries changes of a design for what they do to a finding. */
export function trialOf(accepted: AcceptedDesign, finding: Finding): (text: DesignText) => Outcome {
  const rule = RULES.find(({ id }) => id === finding.id);
  if (!rule) throw new Error(`there is no rule ${finding.id}`);
  const now = judgedOf(accepted);
  // to weigh the wood takes longer than all else together: only what is about its mass is judged by it
  const others = RULES.filter(({ id }) => id !== finding.id && id !== 'mass');
  const bad = (judged: Judged) => others.flatMap((other) => other.judge(judged) ?? []);
  const before = new Set(bad(now).map(({ id, severity }) => `${severity} ${id}`));
  const stays = (judged: Judged) =>
    rule.judge(roughly(judged, now)) !== undefined || rule.judge(judged) !== undefined;

  return (text) => {
    const changed = accept(text);
    if (!changed) return { worth: 'refused', price: [] };
    const judged = judgedOf(changed);
    if (stays(judged)) return { worth: 'stays', price: [] };
    const fresh = bad(judged).filter(({ id, severity }) => !before.has(`${severity} ${id}`));
    const price = fresh.filter(({ id, severity }) => severity === 'warning' || id === 'action-otherwise');
    if (fresh.some(({ severity }) => severity === 'error')) return { worth: 'worse', price };
    return { worth: price.length > 0 ? 'priced' : 'clean', price };
  };
}

/** The same with its mass estimated from that of a near design: what is far off need not be weighed. */
function roughly(judged: Judged, near: Judged): Judged {
  const wood = ({ accepted: { curves, design } }: Judged) => volumeEstimate(curves) * design.timber.density;
  return {
    accepted: judged.accepted,
    report: judged.report,
    get massG() {
      return (near.massG * wood(judged)) / wood(near);
    },
  };
}

function accept(text: DesignText): AcceptedDesign | undefined {
  try {
    return acceptDesign(text);
  } catch (error) {
    if (error instanceof DesignError) return undefined;
    throw error;
  }
}
