import { type Accepted, judge } from '../store/judge.ts';
import type { AppStore } from '../store/store.ts';

/** The present design, which alone is written to files. Throws when it can't be made. */
export function makeable(store: AppStore): Accepted {
  const { accepted } = judge(store.getState().history.present);
  if (!accepted) throw new Error('The design can’t be made as typed. Mend it first.');
  return accepted;
}
