import type { Accepted } from './judge.ts';
import type { AppState } from './state.ts';

/** The last good design of the very bridge that is on the bench: its solved numbers may be taken for this one's. */
export function goodHere({ lastGood, goodIsAnother }: AppState): Accepted | undefined {
  return goodIsAnother ? undefined : lastGood;
}
