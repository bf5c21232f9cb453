import { rememberReference } from '../keep/reference.ts';
import type { Reference } from '../store/state.ts';
import type { AppStore } from '../store/store.ts';

/** Compares with this design from now on, in this browser. It must be one that can be made. */
export function takeReference(store: AppStore, reference: Reference): void {
  rememberReference(reference);
  store.setSession({ reference });
}
