import { useMemo } from 'react';
import { fingerprint } from '../../sheets/fingerprint.ts';
import { changeBench } from '../keep/benches.ts';
import type { Accepted } from '../store/judge.ts';
import type { Bench } from '../store/state.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { benchBefore, benchOf } from './benchOf.ts';

/** The bench of a design, which this browser keeps under the design's fingerprint, and how to change it. */
export function useBench({ text, design }: Accepted): {
  readonly fingerprint: string;
  readonly bench: Bench;
  /** Changes what there is, which may be more than is shown: another window may have ticked meanwhile. */
  readonly change: (anew: (bench: Bench) => Partial<Pick<Bench, 'workshop' | 'ticked' | 'measured'>>) => void;
  /** Another design's, to be taken over. */
  readonly before: ReturnType<typeof benchBefore>;
} {
  const store = useAppStore();
  const benches = useApp(({ session }) => session.benches);
  const { name } = design.guitar;
  const print = useMemo(() => fingerprint(text), [text]);
  const bench = useMemo(() => benchOf(benches, print, name), [benches, print, name]);
  const before = useMemo(() => benchBefore(benches, print), [benches, print]);
  return {
    fingerprint: print,
    bench,
    before,
    change: (anew) => {
      const known = store.getState().session.benches;
      const changed = changeBench(known, print, (benches) => {
        const now = benchOf(benches, print, name);
        return { ...now, ...anew(now), name, at: Date.now() };
      });
      store.setSession({ benches: changed });
    },
  };
}
