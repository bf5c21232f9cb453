import { useEffect } from 'react';
import { openDesign } from '../files/openDesign.ts';
import { saveDesign } from '../files/saveDesign.ts';
import type { AppStore } from '../store/store.ts';
import { useAppStore } from '../store/useApp.ts';

/** Ctrl (or Command) with Z, Shift+Z or Y, S, O; Escape lets go of the selected field. Not while a dialog is open. */
export function useShortcuts(): void {
  const store = useAppStore();
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (document.querySelector('dialog[open]')) return;
      const act =
        event.key === 'Escape' ? letGo : event.ctrlKey || event.metaKey ? commandOf(event) : undefined;
      if (!act || event.defaultPrevented) return;
      event.preventDefault();
      act(store);
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [store]);
}

function commandOf({ key, shiftKey, altKey }: KeyboardEvent): ((store: AppStore) => void) | undefined {
  if (altKey) return undefined;
  switch (key.toLowerCase()) {
    case 'z':
      return shiftKey ? (store) => store.redo() : (store) => store.undo();
    case 'y':
      return (store) => store.redo();
    case 's':
      return (store) => void saveDesign(store);
    case 'o':
      return (store) => void openDesign(store);
    default:
      return undefined;
  }
}

function letGo(store: AppStore): void {
  if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  store.select(undefined);
}
