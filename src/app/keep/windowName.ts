/** A tab's own small memory; `sessionStorage` in a browser. */
export interface TabMemory {
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, value: string) => void;
}

const KEY = 'pinbridge-window';

export interface WindowName {
  /** Under which this window writes; no other open window has it. */
  readonly own: string;
  /** Under which this tab wrote before it was reloaded, or the tab that it was copied from. */
  readonly before: string | undefined;
}

/**
 * The name under which a window keeps its design. It lives as long as the tab, so that a reload finds it again. A tab
 * that was duplicated brings its twin's name, which the twin still holds: it takes a new one.
 * @param claim holds a name for as long as the window lives; false if another window holds it
 */
export async function windowName(
  memory: TabMemory,
  claim: (name: string) => Promise<boolean>,
): Promise<WindowName> {
  const before = memory.getItem(KEY) ?? undefined;
  if (before !== undefined && (await claim(before))) return { own: before, before };
  const own = crypto.randomUUID();
  await claim(own);
  memory.setItem(KEY, own);
  return { own, before };
}

/** Holds a name by a lock of the browser's, which goes when the window goes. */
export function claimByLock(name: string): Promise<boolean> {
  const { locks } = navigator;
  // outside secure pages there are no locks: then a duplicated tab shares its twin's place, and the later change stays
  if (!locks) return Promise.resolve(true);
  return new Promise((resolve) => {
    void locks.request(`pinbridge-window ${name}`, { ifAvailable: true }, (lock) => {
      resolve(lock !== null);
      return lock ? new Promise(() => {}) : undefined;
    });
  });
}
