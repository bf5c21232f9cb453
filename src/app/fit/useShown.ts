import { useApp, useAppStore } from '../store/useApp.ts';

/** The string that the pictures show, and how to show another: one for all of them. */
export function useShown(count: number): readonly [shown: number, show: (i: number) => void] {
  const store = useAppStore();
  const chosen = useApp(({ session }) => session.shownString);
  return [Math.min(chosen, count - 1), (shownString) => store.setSession({ shownString })];
}
