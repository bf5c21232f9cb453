import { general, type Tolerance } from '../trade/tolerances.ts';
import type { Setting, SettingKnown } from './step.ts';

/** Nothing more is said of what was set: its formula says by whom. */
const KNOWN: Readonly<Record<Exclude<SettingKnown, 'set'>, string>> = {
  read: 'read at its source',
  quoted: 'read in a quotation',
  memory: 'from memory, not looked up',
  derived: 'derived here',
  practice: 'common practice',
};

interface Grounded extends Pick<Setting, 'formula' | 'known'> {
  readonly tolerance: Tolerance | null | undefined;
}

/** Where a setting and its tolerance come from, as page, paper and command line all say it. */
export function groundText({ formula, known, tolerance }: Grounded): string {
  const said = known === 'set' ? formula : `${formula}; ${KNOWN[known]}`;
  return tolerance ? `${said}. Tolerance: ${toleranceGround(tolerance)}.` : `${said}.`;
}

/** The standard was read in a quotation: `general`. */
function toleranceGround({ ground }: Tolerance): string {
  return ground === general(0).ground ? `${ground} (${KNOWN.quoted})` : ground;
}
