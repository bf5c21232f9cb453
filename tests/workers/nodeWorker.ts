import { type MessagePort, Worker } from 'node:worker_threads';
import type { WorkerHandle } from '../../src/app/client/workerLine.ts';
import type { Call, Reply, Request } from '../../workers/protocol.ts';
import type { Port } from '../../workers/serve.ts';

/** The line to the client from inside a Node thread. */
export function nodePort<C extends Call>(port: MessagePort | null): Port<C> {
  if (!port) throw new Error('This file runs in a worker thread only.');
  return {
    post: (reply, transfer) => port.postMessage(reply, transfer as ArrayBuffer[]),
    listen: (hear) => port.on('message', (request: Request<C>) => hear(request)),
  };
}

export interface NodeWorkers<C extends Call> {
  spawn(heard: (reply: Reply<C>) => void, crashed: (why: string) => void): WorkerHandle<C>;
  /** Ends the living thread from outside, in the middle of whatever it does. */
  kill(): Promise<void>;
  readonly started: () => number;
}

/** Real threads for a client, each running the file of this name beside this one. */
export function nodeWorkers<C extends Call>(file: string): NodeWorkers<C> {
  let living: Worker | undefined;
  let started = 0;
  return {
    spawn(heard, crashed) {
      started += 1;
      const thread = new Worker(new URL('thread.mjs', import.meta.url), {
        workerData: new URL(file, import.meta.url).href,
      });
      living = thread;
      thread.on('message', heard);
      thread.on('error', (error: Error) => crashed(`broke off (${error.message})`));
      thread.on('messageerror', (error) => crashed(`sent what can't be read: ${error.message}`));
      thread.on('exit', () => crashed('ended'));
      return { post: (request) => thread.postMessage(request), end: () => void thread.terminate() };
    },
    kill: async () => {
      await living?.terminate();
    },
    started: () => started,
  };
}
