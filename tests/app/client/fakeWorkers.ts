import type { SpawnWorkers } from '../../../src/app/client/spawnWorkers.ts';
import type { Limits, Spawn } from '../../../src/app/client/workerLine.ts';
import type { DraftCall, GeometryCall } from '../../../workers/protocol.ts';
import { type Service, serve } from '../../../workers/serve.ts';
import { type FakeBuilds, fakeGeometry, fakeLine, fakeSolid, markOf } from '../../workers/fakeLine.ts';

/** Short enough to wait for, long enough for a busy machine. */
export const QUICK: Limits = {
  answerMs: { draft: 200, solid: 200, file: 200, mesh: 200 },
  startMs: 300,
  plainStartMs: 300,
  heapBytes: 1.5e9,
  pauseMs: 20,
  longestPauseMs: 80,
};

export interface FakeWorkers extends SpawnWorkers {
  /** How many geometry workers were started, and when, ms. */
  readonly starts: readonly number[];
  /** Of each, whether it was asked to do without threads. */
  readonly plain: readonly boolean[];
  readonly ended: () => number;
  /** The living geometry worker dies. */
  crash(why: string): void;
}

/** Workers that live in this thread; `start` is called for each new geometry worker with its number, from 1. */
export function fakeWorkers(
  fake: FakeBuilds,
  start: (number: number) => Promise<Service<GeometryCall>> = async () => fakeGeometry(fake),
): FakeWorkers {
  const starts: number[] = [];
  const plains: boolean[] = [];
  let ended = 0;
  let crash: (why: string) => void = () => {};
  const geometry: Spawn<GeometryCall> = (heard, crashed, plain) => {
    starts.push(performance.now());
    plains.push(plain);
    const number = starts.length;
    const line = fakeLine<GeometryCall>(heard);
    void serve(line.port, () => start(number));
    crash = crashed;
    return {
      post: line.post,
      end: () => {
        ended += 1;
      },
    };
  };
  const draft: Spawn<DraftCall> = (heard) => {
    const line = fakeLine<DraftCall>(heard);
    void serve<DraftCall>(line.port, async () => ({
      threads: false,
      heapBytes: () => 1e7,
      warmUp: async () => {},
      answer: {
        draft: async ({ design }) => {
          const { mesh } = fakeSolid(markOf(design));
          return { mesh, volumeMm3: 1, ms: 1 };
        },
      },
      transfer: () => [],
    }));
    return { post: line.post, end: () => {} };
  };
  return { draft, geometry, starts, plain: plains, ended: () => ended, crash: (why) => crash(why) };
}
