import type { Call, DraftCall, GeometryCall } from '../../../workers/protocol.ts';
import type { Spawn, WorkerHandle } from './workerLine.ts';

/** How the client starts its two workers; tests put their own in. */
export interface SpawnWorkers {
  readonly draft: Spawn<DraftCall>;
  readonly geometry: Spawn<GeometryCall>;
}

/** The browser's own workers. The bundler needs to see each address and its options as they are. */
export const spawnWorkers: SpawnWorkers = {
  draft: (heard, crashed) =>
    connect(
      new Worker(new URL('../../../workers/draft.worker.ts', import.meta.url), { type: 'module' }),
      heard,
      crashed,
    ),
  geometry: (heard, crashed, plain) =>
    connect(
      plain
        ? new Worker(new URL('../../../workers/geometry.worker.ts', import.meta.url), {
            type: 'module',
            name: 'geometry, one thread',
          })
        : new Worker(new URL('../../../workers/geometry.worker.ts', import.meta.url), { type: 'module' }),
      heard,
      crashed,
    ),
};

function connect<C extends Call>(
  worker: Worker,
  heard: Parameters<Spawn<C>>[0],
  crashed: Parameters<Spawn<C>>[1],
): WorkerHandle<C> {
  worker.onmessage = (event) => heard(event.data);
  worker.onerror = (event) => {
    event.preventDefault();
    // A script that can't be loaded gives an event without a message.
    crashed(
      event.message ? `broke off (${event.message})` : 'could not be got ready (its program was not loaded)',
    );
  };
  worker.onmessageerror = () => crashed('broke off (its answer could not be read)');
  return { post: (request) => worker.postMessage(request), end: () => worker.terminate() };
}
