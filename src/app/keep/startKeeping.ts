import type { AppStore } from '../store/store.ts';
import { type FoundDesign, findKept } from './findKept.ts';
import { keepDesign } from './keepDesign.ts';
import { leftBehind } from './leftBehind.ts';
import { browserShelf } from './shelf.ts';
import { claimByLock, windowName } from './windowName.ts';

/** How long the page waits for the browser's database, ms. */
const PATIENCE = 3000;

export interface Started {
  readonly found: FoundDesign | undefined;
  /** Keeps the open design from now on. */
  readonly keep: (store: AppStore) => void;
}

/** Finds the design that this window had open, and how to keep it. A browser that refuses storage gives neither. */
export async function startKeeping(): Promise<Started> {
  try {
    const shelf = browserShelf();
    const name = await windowName(sessionStorage, claimByLock);
    const found = await inTime(findKept(shelf, name, leftBehind(sessionStorage)));
    return {
      found,
      keep: (store) => {
        const { flush } = keepDesign(store, shelf, name.own, sessionStorage);
        addEventListener('pagehide', flush);
        document.addEventListener('visibilitychange', flush);
      },
    };
  } catch {
    return { found: undefined, keep: (store) => store.setSession({ keeping: 'refused' }) };
  }
}

function inTime<T>(promise: Promise<T>): Promise<T> {
  return Promise.race([
    promise,
    new Promise<never>((_, reject) => setTimeout(() => reject(new Error('no answer in time')), PATIENCE)),
  ]);
}
