import { judge } from '../store/judge.ts';
import type { AppStore } from '../store/store.ts';
import { leaveBehind } from './leftBehind.ts';
import type { KeptDesign, Shelf } from './shelf.ts';
import type { TabMemory } from './windowName.ts';

/** How long changes may gather before they are written, ms. */
const PAUSE = 250;

export interface Keeping {
  /** Writes what is not written yet. A page that is being left may die first, so it also goes into the tab's memory. */
  readonly flush: () => void;
  readonly stop: () => void;
}

/**
 * Writes the open design to the shelf under the window's own name whenever it has changed. When the browser refuses,
 * the design goes on living in this page alone, and the session says so.
 */
export function keepDesign(store: AppStore, shelf: Shelf, name: string, memory: TabMemory): Keeping {
  let written: unknown;
  let writtenFile: unknown;
  let pause: ReturnType<typeof setTimeout> | undefined;

  const present = (): KeptDesign => {
    const { history, lastGood, session } = store.getState();
    const text = history.present;
    const file = session.file && { name: session.file.name, text: session.file.text };
    return { text, good: judge(text).ok ? undefined : lastGood?.text, file, at: Date.now() };
  };

  const isWritten = () => {
    const { history, session } = store.getState();
    return history.present === written && session.file === writtenFile;
  };

  const write = async () => {
    clearTimeout(pause);
    pause = undefined;
    const design = present();
    if (isWritten()) return;
    written = design.text;
    writtenFile = store.getState().session.file;
    try {
      await shelf.set(name, design);
      if (store.getState().history.present === design.text) store.setSession({ keeping: 'kept' });
    } catch {
      store.setSession({ keeping: 'refused' });
    }
  };

  const unsubscribe = store.subscribe(({ session }) => {
    if (isWritten() || pause !== undefined) return;
    pause = setTimeout(() => void write(), PAUSE);
    if (session.keeping === 'kept') store.setSession({ keeping: 'writing' });
  });
  void write();
  return {
    flush: () => {
      if (!isWritten()) leaveBehind(memory, present());
      void write();
    },
    stop: () => {
      clearTimeout(pause);
      unsubscribe();
    },
  };
}
