import { createContext, useContext } from 'react';
import { useStore } from 'zustand/react';
import type { AppState } from './state.ts';
import type { AppStore } from './store.ts';

export const StoreContext = createContext<AppStore | undefined>(undefined);

/** The store that the page was mounted with. */
export function useAppStore(): AppStore {
  const store = useContext(StoreContext);
  if (!store) throw new Error('The page must be mounted inside a StoreContext');
  return store;
}

/** A value derived from the store. `select` must give the same object while the state is the same. */
export function useApp<T>(select: (state: AppState) => T): T {
  return useStore(useAppStore(), select);
}
