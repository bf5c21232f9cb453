import { judge } from '../store/judge.ts';
import type { AppStore } from '../store/store.ts';
import type { Shelf } from './shelf.ts';

/** How long changes may gather before they are written, ms. */
const PAUSE = 250;

export interface Keeping {
  /** Writes what is not written yet. */
  readonly flush: () => void;
  readonly stop: () => void;
}

/**
 * Writes the open design to the shelf under the window's own name whenever it has changed. When the browser refuses,
 * the design goes on living in this page alone, and the session says so.
 */
export function keepDesign(store: AppStore, shelf: Shelf, name: string): Keeping {
  let written: unknown;
  let pause: ReturnType<typeof setTimeout> | undefined;

  const write = async () => {
    clearTimeout(pause);
    pause = undefined;
    const { history, lastGood } = store.getState();
    const text = history.present;
    if (text === written) return;
    written = text;
    try {
      await shelf.set(name, { text, good: judge(text).ok ? undefined : lastGood?.text, at: Date.now() });
      if (store.getState().history.present === text) store.setSession({ keeping: 'kept' });
    } catch {
      store.setSession({ keeping: 'refused' });
    }
  };

  const unsubscribe = store.subscribe(({ history, session }) => {
    if (history.present === written || pause !== undefined) return;
    pause = setTimeout(() => void write(), PAUSE);
    if (session.keeping === 'kept') store.setSession({ keeping: 'writing' });
  });
  void write();
  return {
    flush: () => void write(),
    stop: () => {
      clearTimeout(pause);
      unsubscribe();
    },
  };
}
