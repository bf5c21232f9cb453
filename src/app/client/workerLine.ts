import {
  type Call,
  type Calls,
  type Failure,
  NEWER,
  type Reply,
  type Request,
} from '../../../workers/protocol.ts';
import { ClientError } from './clientError.ts';

/** A running worker, from the page's side. */
export interface WorkerHandle<C extends Call> {
  post(request: Request<C>): void;
  /** Ends it at once, whatever it is doing. */
  end(): void;
}

/**
 * Starts a worker. `crashed` is told when it dies or can't be loaded, in words that follow what it makes: "The exact
 * solid" … "broke off (out of memory)". `plain`: one was lost before
 * it was ready; this one shall do without what may have failed (several threads).
 */
export type Spawn<C extends Call> = (
  heard: (reply: Reply<C>) => void,
  crashed: (how: string) => void,
  plain: boolean,
) => WorkerHandle<C>;

export interface Limits {
  /** From a request being taken to its answer; a worker that needs longer hangs, since no call can be interrupted. */
  readonly answerMs: Readonly<Record<Call, number>>;
  /** From spawning to ready, before a plain worker is tried: threads that can't start give no error, only silence. */
  readonly startMs: number;
  /** The same for a plain worker, which can only be slow: the kernel is a download of several megabytes. */
  readonly plainStartMs: number;
  /** Past this a worker is replaced once it has answered. */
  readonly heapBytes: number;
  /** Wait before the second start in a row that follows a crash; doubles with each, up to the longest. */
  readonly pauseMs: number;
  readonly longestPauseMs: number;
}

export interface LineState {
  readonly phase: 'starting' | 'ready' | 'restarting';
  /** Whether any request waits for its answer. */
  readonly busy: boolean;
  readonly threads: boolean | undefined;
  readonly heapBytes: number;
  /** Why the worker was last lost, until a new one has done something. */
  readonly trouble: string | undefined;
}

export interface WorkerLine<C extends Call> {
  /** Rejects with `ClientError`. */
  ask<K extends C>(call: K, ask: Calls[K]['ask']): Promise<Calls[K]['answer']>;
  dispose(): void;
}

interface Open<C extends Call> {
  readonly request: Request<C>;
  resolve(answer: Calls[C]['answer']): void;
  reject(error: ClientError): void;
}

/**
 * Keeps one worker alive and matches its answers to numbered requests. A crash or a hang refuses every open request
 * and starts a new worker, at once the first time and then after growing pauses until one has answered something. The
 * first that is lost before it was ready is replaced by a plain one, and nobody refused. A worker grown too large is
 * replaced between two answers; open requests then go to the new one.
 *
 * @param makes what it makes, as a sentence about it begins: `The exact solid`
 */
export function workerLine<C extends Call>(
  makes: string,
  spawn: Spawn<C>,
  limits: Limits,
  changed: (state: LineState) => void,
): WorkerLine<C> {
  const open = new Map<number, Open<C>>();
  let state: LineState = {
    phase: 'starting',
    busy: false,
    threads: undefined,
    heapBytes: 0,
    trouble: undefined,
  };
  let worker: WorkerHandle<C> | undefined;
  /** Which worker is the living one: whatever an ended one still says is not heard. */
  let generation = 0;
  let lastId = 0;
  /** Crashes since a worker last did something. */
  let crashes = 0;
  let plain = false;
  let disposed = false;
  let pause: ReturnType<typeof setTimeout> | undefined;
  /** Runs while the worker starts or works; `takenId` is what it works on. */
  let watch: ReturnType<typeof setTimeout> | undefined;
  let takenId = 0;

  function update(change: Partial<LineState>): void {
    state = { ...state, ...change, busy: open.size > 0 };
    changed(state);
  }

  function watchFor(ms: number, how: string): void {
    clearTimeout(watch);
    watch = setTimeout(() => lose(how), ms);
  }

  function begin(): void {
    generation += 1;
    const mine = generation;
    const startMs = plain ? limits.plainStartMs : limits.startMs;
    watchFor(startMs, `could not be got ready within ${seconds(startMs)}`);
    try {
      const started = spawn(
        (reply) => mine === generation && hear(reply),
        (how) => mine === generation && lose(how),
        plain,
      );
      if (mine !== generation) {
        started.end();
        return;
      }
      worker = started;
      for (const { request } of open.values()) worker.post(request);
    } catch (error) {
      lose(`could not be got ready (${error instanceof Error ? error.message : String(error)})`);
    }
  }

  function end(): void {
    generation += 1;
    takenId = 0;
    clearTimeout(watch);
    clearTimeout(pause);
    worker?.end();
    worker = undefined;
  }

  function lose(how: string): void {
    const why = `${makes} ${how}.`;
    end();
    if (state.phase !== 'ready' && !plain) {
      plain = true;
      begin();
      return;
    }
    const waitMs = crashes === 0 ? 0 : Math.min(limits.pauseMs * 2 ** (crashes - 1), limits.longestPauseMs);
    crashes += 1;
    pause = setTimeout(begin, waitMs);
    const refused = [...open.values()];
    open.clear();
    update({
      phase: 'restarting',
      trouble: `${why} It is tried again${waitMs === 0 ? '' : ` in ${seconds(waitMs)}`}.`,
    });
    for (const { reject } of refused) reject(new ClientError({ kind: 'stopped', message: why }));
  }

  function hear(reply: Reply<C>): void {
    switch (reply.kind) {
      case 'ready':
        clearTimeout(watch);
        update({ phase: 'ready', threads: reply.threads, heapBytes: reply.heapBytes });
        break;
      case 'warm':
        crashes = 0;
        update({ heapBytes: reply.heapBytes, trouble: undefined });
        break;
      case 'taken': {
        takenId = reply.id;
        const call = open.get(reply.id)?.request.call;
        const ms = call ? limits.answerMs[call] : Math.max(...Object.values(limits.answerMs));
        watchFor(ms, `took too long (over ${seconds(ms)}) and was stopped`);
        break;
      }
      case 'broken':
        lose(reply.message);
        break;
      default:
        settle(reply);
    }
  }

  function settle(reply: Extract<Reply<C>, { kind: 'answer' | 'refused' }>): void {
    const worked = reply.id === takenId;
    const request = open.get(reply.id);
    open.delete(reply.id);
    if (worked) {
      clearTimeout(watch);
      takenId = 0;
      crashes = 0;
    }
    if (worked && reply.heapBytes > limits.heapBytes) {
      end();
      update({ phase: 'restarting', heapBytes: reply.heapBytes, trouble: undefined });
      begin();
    } else update({ heapBytes: reply.heapBytes, trouble: worked ? undefined : state.trouble });
    // A request that was superseded meanwhile is open no more: its stale answer is dropped.
    if (reply.kind === 'answer') request?.resolve(reply.answer);
    else request?.reject(new ClientError(reply.failure));
  }

  function refuse({ request, reject }: Open<C>, failure: Failure): void {
    open.delete(request.id);
    reject(new ClientError(failure));
  }

  begin();
  return {
    ask<K extends C>(call: K, ask: Calls[K]['ask']): Promise<Calls[K]['answer']> {
      if (disposed)
        return Promise.reject(new ClientError({ kind: 'stopped', message: 'The page was closed.' }));
      if (NEWER[call] === 'replaces') {
        for (const older of [...open.values()].filter((o) => o.request.call === call)) {
          refuse(older, { kind: 'superseded' });
        }
      }
      lastId += 1;
      // call and ask belong together by this method's own type, which the union can't express
      const request = { id: lastId, call, ask } as unknown as Request<C>;
      return new Promise((resolve, reject) => {
        open.set(request.id, { request, resolve, reject });
        worker?.post(request);
        update({});
      });
    },
    dispose(): void {
      disposed = true;
      end();
      for (const one of [...open.values()]) refuse(one, { kind: 'stopped', message: 'The page was closed.' });
    },
  };
}

function seconds(ms: number): string {
  return `${Math.round(ms / 100) / 10} s`;
}
