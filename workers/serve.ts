import { failureOf, isFatal, messageOf } from './failureOf.ts';
import {
  type Call,
  type Calls,
  type Failure,
  NEWER,
  type Reply,
  type Request,
  type Signal,
} from './protocol.ts';
import { turn } from './turn.ts';

/** The worker's end of the line to its client. */
export interface Port<C extends Call> {
  post(reply: Reply<C>, transfer: readonly Transferable[]): void;
  listen(hear: (request: Request<C>) => void): void;
}

/** What a worker does once it has loaded. */
export interface Service<C extends Call> {
  readonly threads: boolean;
  heapBytes(): number;
  /** Builds once for nothing, since first builds are slow. Left out or abandoned when a request waits: that warms too. */
  warmUp(signal: Signal): Promise<void>;
  readonly answer: {
    readonly [K in C]: (ask: Calls[K]['ask'], signal: Signal) => Promise<Calls[K]['answer']>;
  };
  /** The buffers of an answer that may leave without being copied. */
  transfer(answer: Calls[C]['answer']): readonly Transferable[];
}

interface Job<C extends Call> extends Signal {
  readonly request: Request<C>;
  abandoned: boolean;
}

/**
 * Answers numbered requests one at a time, in order, the newest winning as `NEWER` says. Every request gets exactly
 * one answer or typed refusal, unless the worker is broken, which it says once. Listens before it starts, so that
 * requests sent to a loading worker wait. Resolves only when the worker is broken.
 */
export async function serve<C extends Call>(port: Port<C>, start: () => Promise<Service<C>>): Promise<void> {
  const queue: Job<C>[] = [];
  const warming = { abandoned: false };
  let running: Job<C> | undefined;
  let heapBytes = () => 0;
  let wake = () => {};

  port.listen((request) => {
    const newer = NEWER[request.call];
    if (newer !== 'joins the queue') {
      for (const job of queue.filter((older) => older.request.call === request.call)) {
        queue.splice(queue.indexOf(job), 1);
        refuse(job, { kind: 'superseded' });
      }
    }
    if (newer === 'replaces' && running?.request.call === request.call) running.abandoned = true;
    queue.push({ request, abandoned: false });
    warming.abandoned = true;
    wake();
  });

  function refuse(job: Job<C>, failure: Failure): void {
    port.post({ kind: 'refused', id: job.request.id, failure, heapBytes: heapBytes() }, []);
  }

  async function run<K extends C>(
    service: Service<C>,
    job: Job<C> & { readonly request: Request<K> },
  ): Promise<void> {
    const { id, call, ask } = job.request;
    port.post({ kind: 'taken', id }, []);
    const answer = await service.answer[call](ask, job);
    if (job.abandoned) return refuse(job, { kind: 'superseded' });
    port.post({ kind: 'answer', id, answer, heapBytes: heapBytes() }, service.transfer(answer));
  }

  async function warmUp(service: Service<C>): Promise<void> {
    try {
      await service.warmUp(warming);
    } catch (error) {
      // Abandoned for a request, or refused as a request's build would be: the requests will say so themselves.
      if (isFatal(error)) throw error;
    }
    port.post({ kind: 'warm', heapBytes: heapBytes() }, []);
  }

  async function work(service: Service<C>): Promise<never> {
    await turn();
    if (queue.length === 0) await warmUp(service);
    for (;;) {
      // What has arrived meanwhile is heard first: it may supersede what waits.
      await turn();
      running = queue.shift();
      if (!running) {
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
        continue;
      }
      try {
        await run(service, running);
      } catch (error) {
        if (isFatal(error)) throw error;
        refuse(running, running.abandoned ? { kind: 'superseded' } : failureOf(error));
      }
      running = undefined;
    }
  }

  let how = 'could not be got ready';
  try {
    const service = await start();
    heapBytes = () => service.heapBytes();
    port.post({ kind: 'ready', threads: service.threads, heapBytes: heapBytes() }, []);
    how = 'broke off';
    await work(service);
  } catch (error) {
    port.post({ kind: 'broken', message: `${how} (${messageOf(error)})` }, []);
  }
}
