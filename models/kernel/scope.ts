/** Anything of the kernel's that lives outside the garbage collector's reach. */
export interface Handle {
  delete(): void;
}

/**
 * Owns kernel handles and frees them together: one scope a build, so that no path through it, failing ones included,
 * can leak. Handles are freed last made first.
 */
export class Scope {
  /** Handles alive in all scopes; for tests. */
  static live = 0;
  readonly #handles: Handle[] = [];

  /** Takes a handle over and gives it back. */
  own<T extends Handle>(handle: T): T {
    this.#handles.push(handle);
    Scope.live++;
    return handle;
  }

  free(): void {
    for (const handle of this.#handles.reverse()) handle.delete();
    Scope.live -= this.#handles.length;
    this.#handles.length = 0;
  }
}

/** Runs `work` with a scope that is freed when it ends, however it ends. */
export function scoped<T>(work: (scope: Scope) => T): T {
  const scope = new Scope();
  try {
    return work(scope);
  } finally {
    scope.free();
  }
}
