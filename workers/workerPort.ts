import type { Call, Request } from './protocol.ts';
import type { Port } from './serve.ts';

/** The line to the page from inside a browser's worker. */
export function workerPort<C extends Call>(scope: DedicatedWorkerGlobalScope): Port<C> {
  return {
    post: (reply, transfer) => scope.postMessage(reply, [...transfer]),
    listen: (hear) => {
      scope.onmessage = (event: MessageEvent<Request<C>>) => hear(event.data);
    },
  };
}
