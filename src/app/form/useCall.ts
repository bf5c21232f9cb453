import { useEffect, useRef } from 'react';
import { useApp, useAppStore } from '../store/useApp.ts';

/**
 * A row, or a table of several fields, that takes the caret when a field of it is called to (an input that is wrong before
 * the others), and comes into sight when one is selected elsewhere.
 */
export function useCall(...paths: readonly string[]) {
  const store = useAppStore();
  const row = useRef<HTMLDivElement>(null);
  const called = useApp(({ session }) => (paths.includes(session.call.path) ? session.call : undefined));
  const selected = useApp(({ session }) => paths.find((path) => path === session.selected));

  useEffect(() => {
    if (!called || !row.current) return;
    const inputs = [...row.current.querySelectorAll<HTMLElement>('input, select')].filter(
      (input) => input.closest<HTMLElement>('[data-path]')?.dataset.path === called.path,
    );
    (inputs.find((input) => input.ariaInvalid === 'true') ?? inputs[0])?.focus();
    // answered: a group opened later must not take the caret again
    store.setSession({ call: { path: '', count: called.count } });
  }, [called, store]);
  useEffect(() => {
    if (selected) row.current?.scrollIntoView({ block: 'nearest' });
  }, [selected]);
  return row;
}
