import { judge } from '../../store/judge.ts';
import { reportOf } from '../../store/reportOf.ts';
import type { AppState } from '../../store/state.ts';
import { useApp } from '../../store/useApp.ts';

const current = ({ history }: AppState) => judge(history.present).accepted;

/** The present design's fit and what is said of it; undefined while it can't be made: measures are taken over from no other. */
export function useMeasured() {
  const accepted = useApp(current);
  return accepted && { accepted, report: reportOf(accepted) };
}
