import type { Bench, Benches } from '../store/state.ts';

/**
 * The bench of a design by its fingerprint; a fresh one, with the workshop that was last worked in, where nothing was
 * ticked or measured yet.
 */
export function benchOf(benches: Benches, fingerprint: string, name: string): Bench {
  const known = benches[fingerprint];
  if (known) return known;
  const last = newest(Object.entries(benches))?.[1];
  return { name, workshop: last?.workshop ?? {}, ticked: [], measured: {}, at: 0 };
}

/**
 * The newest bench of another design on which something was done: what may be taken over when a design has changed. None
 * where this design has work of its own.
 */
export function benchBefore(
  benches: Benches,
  fingerprint: string,
): { readonly fingerprint: string; readonly bench: Bench } | undefined {
  const own = benches[fingerprint];
  if (own && hasWork(own)) return undefined;
  const found = newest(
    Object.entries(benches).filter(([one, bench]) => one !== fingerprint && hasWork(bench)),
  );
  return found && { fingerprint: found[0], bench: found[1] };
}

function hasWork({ ticked, measured }: Bench): boolean {
  return ticked.length > 0 || Object.keys(measured).length > 0;
}

function newest(all: readonly (readonly [string, Bench])[]): readonly [string, Bench] | undefined {
  return all.reduce<readonly [string, Bench] | undefined>(
    (best, one) => (best && best[1].at >= one[1].at ? best : one),
    undefined,
  );
}
