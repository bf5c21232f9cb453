import type { Holes } from '../../../models/curves/curves.ts';
import type { Draft, FileOptions, PartMesh, Solid, WrittenFile } from '../../../workers/protocol.ts';
import type { DesignText } from '../../design/design.ts';
import { type SpawnWorkers, spawnWorkers } from './spawnWorkers.ts';
import { type Limits, type LineState, workerLine } from './workerLine.ts';

export interface ClientState {
  /** `restarting`: the kernel was lost, or grew too large; `trouble` says why if it was lost. */
  readonly kernel: 'starting' | 'ready' | 'building' | 'restarting';
  /** Whether the kernel cuts with several threads; undefined until it has started once. */
  readonly threads: boolean | undefined;
  readonly heapBytes: number;
  /** In a sentence for a person; undefined when all is well. */
  readonly trouble: string | undefined;
}

/** The page's only way to a solid. Every promise is refused with a `ClientError`. */
export interface Client {
  /** A newer draft replaces those that wait; one under way still answers, so a dragged slider keeps moving the picture. */
  draft(design: DesignText, holes: Holes): Promise<Draft>;
  /** A newer solid replaces every older one: an answer is always to the last question. */
  solid(design: DesignText, holes: Holes): Promise<Solid>;
  /** Never dropped for a newer request. */
  file(design: DesignText, options: FileOptions): Promise<WrittenFile>;
  /** The exact solid's triangles, for files: never dropped for a newer request, and none is dropped for it. */
  mesh(design: DesignText, holes: Holes): Promise<PartMesh>;
  /** Calls back at once with the present state, then on every change. Returns how to stop. */
  onState(listener: (state: ClientState) => void): () => void;
  dispose(): void;
}

/**
 * A full build takes half a second, a draft 15 ms; a minute or ten seconds can only be a hang. The kernel's pointers
 * turn negative at 2 GB. It is a download of 7 MB: 45 seconds load it at 1.3 Mbit/s, five minutes at 0.2.
 */
export const LIMITS: Limits = {
  answerMs: { draft: 10_000, solid: 60_000, file: 60_000, mesh: 60_000 },
  startMs: 45_000,
  plainStartMs: 300_000,
  heapBytes: 1.5e9,
  pauseMs: 500,
  longestPauseMs: 60_000,
};

/** Starts both workers at once and keeps them. */
export function createClient(spawn: SpawnWorkers = spawnWorkers, limits: Limits = LIMITS): Client {
  const listeners = new Set<(state: ClientState) => void>();
  let state: ClientState = { kernel: 'starting', threads: undefined, heapBytes: 0, trouble: undefined };

  function changed({ phase, busy, threads, heapBytes, trouble }: LineState): void {
    const kernel = phase === 'ready' && busy ? 'building' : phase;
    const next: ClientState = { kernel, threads, heapBytes, trouble };
    if (sameState(next, state)) return;
    state = next;
    for (const listener of listeners) listener(state);
  }

  // The draft worker first: it is small, and it draws the first picture.
  const drafts = workerLine('The draft', spawn.draft, limits, () => {});
  const geometry = workerLine('The exact solid', spawn.geometry, limits, changed);
  return {
    draft: (design, holes) => drafts.ask('draft', { design, holes }),
    solid: (design, holes) => geometry.ask('solid', { design, holes }),
    file: (design, options) => geometry.ask('file', { design, options }),
    mesh: async (design, holes) => (await geometry.ask('mesh', { design, holes })).mesh,
    onState(listener) {
      listeners.add(listener);
      listener(state);
      return () => listeners.delete(listener);
    },
    dispose() {
      drafts.dispose();
      geometry.dispose();
    },
  };
}

function sameState(a: ClientState, b: ClientState): boolean {
  return (
    a.kernel === b.kernel && a.threads === b.threads && a.heapBytes === b.heapBytes && a.trouble === b.trouble
  );
}
