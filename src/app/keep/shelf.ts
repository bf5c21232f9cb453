import { createStore, del, entries, get, type UseStore } from 'idb-keyval';

/** A design as a window keeps it. */
export interface KeptDesign {
  readonly text: unknown;
  /** The last design that could be made, when the text is not one. */
  readonly good: unknown;
  /** Name and text of the file that it came from or was saved to, if it was. */
  readonly file?: unknown;
  /** When it was written, ms since 1970. */
  readonly at: number;
}

/** Where windows keep their open designs, each under its own name. Every call may be refused by the browser. */
export interface Shelf {
  readonly get: (name: string) => Promise<KeptDesign | undefined>;
  readonly set: (name: string, design: KeptDesign) => Promise<void>;
  readonly all: () => Promise<readonly (readonly [string, KeptDesign])[]>;
  readonly remove: (name: string) => Promise<void>;
}

/** The browser's own database. */
export function browserShelf(): Shelf {
  let opened: UseStore | undefined;
  const open = () => {
    opened ??= createStore('pinbridge', 'open-designs');
    return opened;
  };
  return {
    get: async (name) => get<KeptDesign>(name, open()),
    set: async (name, design) =>
      open()(
        'readwrite',
        (store) =>
          new Promise((resolve, reject) => {
            store.put(design, name);
            store.transaction.oncomplete = () => resolve();
            store.transaction.onabort = () => reject(store.transaction.error);
            // at once, since a page that is being left doesn't live to see the put succeed
            store.transaction.commit();
          }),
      ),
    all: async () => entries<string, KeptDesign>(open()),
    remove: async (name) => del(name, open()),
  };
}
