import { useEffect, useRef } from 'react';
import { useApp, useAppStore } from '../store/useApp.ts';

/** A row that takes the caret when its field is called to, and comes into sight when it is selected elsewhere. */
export function useCall(path: string) {
  const store = useAppStore();
  const row = useRef<HTMLDivElement>(null);
  const called = useApp(({ session }) => (session.call.path === path ? session.call.count : 0));
  const selected = useApp(({ session }) => session.selected === path);

  useEffect(() => {
    if (called === 0) return;
    row.current?.querySelector<HTMLElement>('input, select')?.focus();
    // answered: a group opened later must not take the caret again
    store.setSession({ call: { path: '', count: called } });
  }, [called, store]);
  useEffect(() => {
    if (selected) row.current?.scrollIntoView({ block: 'nearest' });
  }, [selected]);
  return row;
}
