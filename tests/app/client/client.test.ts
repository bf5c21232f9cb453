import { afterEach, expect, test, vi } from 'vitest';
import { type Client, type ClientState, createClient } from '../../../src/app/client/client.ts';
import { ClientError } from '../../../src/app/client/clientError.ts';
import type { Limits } from '../../../src/app/client/workerLine.ts';
import { DesignError, misfit } from '../../../src/design/problem.ts';
import type { Failure, Solid } from '../../../workers/protocol.ts';
import { type FakeBuilds, fakeGeometry, HOLES, marked } from '../../workers/fakeLine.ts';
import { type FakeWorkers, fakeWorkers, QUICK } from './fakeWorkers.ts';

const until = (check: () => void) => vi.waitFor(check, { timeout: 5000, interval: 2 });
const later = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));
const forever = new Promise<never>(() => {});

let client: Client | undefined;
afterEach(() => client?.dispose());

function open(fake: FakeBuilds, limits: Limits = QUICK): ReturnType<typeof openOn> {
  return openOn(fakeWorkers(fake), limits);
}

function openOn(workers: FakeWorkers, limits: Limits = QUICK) {
  const states: ClientState[] = [];
  const opened = createClient(workers, limits);
  client = opened;
  opened.onState((state) => states.push(state));
  return { client: opened, workers, states, state: () => states.at(-1) };
}

/** The mark of the design an answer was made from, or why there is none. */
async function outcome(answer: Promise<Solid>): Promise<number | Failure> {
  try {
    return (await answer).mesh.positions[0] ?? Number.NaN;
  } catch (error) {
    if (error instanceof ClientError) return error.failure;
    throw error;
  }
}

const superseded: Failure = { kind: 'superseded' };
const stopped = (message: string): Failure => ({ kind: 'stopped', message });

test('starts both workers, says so, and answers each call', async () => {
  const { client, states } = open({});
  expect(states).toEqual([{ kernel: 'starting', threads: undefined, heapBytes: 0, trouble: undefined }]);
  await until(() => expect(states.at(-1)).toMatchObject({ kernel: 'ready', threads: false, heapBytes: 1e8 }));
  const [draft, solid, file] = await Promise.all([
    client.draft(marked(1), HOLES),
    client.solid(marked(2), HOLES),
    client.file(marked(3), { format: 'stl', holes: HOLES, deviationMm: 0.02 }),
  ]);
  expect([draft.mesh.positions[0], solid.mesh.positions[0], file.name]).toEqual([1, 2, 'bridge.stl']);
  expect(states.map((s) => s.kernel)).toEqual(['starting', 'ready', 'building', 'ready']);
});

test('requests made before the worker is ready are answered when it is', async () => {
  const { client } = open({});
  expect(await outcome(client.solid(marked(5), HOLES))).toBe(5);
});

test('50 changes in a second: the last is answered rightly, 49 are superseded', async () => {
  const { client } = open({ steps: 4, step: () => later(12) });
  const outcomes: Promise<number | Failure>[] = [];
  for (let mark = 1; mark <= 50; mark++) {
    outcomes.push(outcome(client.solid(marked(mark), HOLES)));
    await later(20);
  }
  expect(await Promise.all(outcomes)).toEqual([...Array(49).fill(superseded), 50]);
});

test('50 drafts in a second: every answer is to its own question, in order, and the last is answered', async () => {
  const { client } = open({});
  const answered: number[] = [];
  const asked: Promise<void>[] = [];
  for (let mark = 1; mark <= 50; mark++) {
    asked.push(
      client.draft(marked(mark), HOLES).then(
        (draft) => {
          expect(draft.mesh.positions[0]).toBe(mark);
          answered.push(mark);
        },
        (error) => expect(error.failure).toEqual(superseded),
      ),
    );
    await later(mark % 10 === 0 ? 10 : 1);
  }
  await Promise.all(asked);
  expect(answered.at(-1)).toBe(50);
  expect(answered).toEqual([...answered].sort((a, b) => a - b));
  expect(answered.length, 'the picture must move while values change').toBeGreaterThan(5);
});

test('an answer already on its way when a newer question is asked is dropped', async () => {
  let second: Promise<number | Failure> | undefined;
  const { client } = open({
    steps: 1,
    // The worker hears of the second request only after it has answered the first.
    step: () => {
      second ??= outcome(client.solid(marked(2), HOLES));
    },
  });
  expect(await outcome(client.solid(marked(1), HOLES))).toEqual(superseded);
  expect(await second).toBe(2);
});

test('a design that cannot be made comes back with its problems, and says them', async () => {
  const problem = misfit('pins.behindSlot', 40, 'at most 14.2 mm', 'Move the pins forward.');
  const { client } = open({
    step: () => {
      throw new DesignError([problem]);
    },
  });
  const error: unknown = await client.solid(marked(1), HOLES).catch((e: unknown) => e);
  expect(error).toBeInstanceOf(ClientError);
  expect(error).toMatchObject({
    failure: { kind: 'design', problems: [problem] },
    message: expect.stringContaining('Move the pins forward.'),
  });
});

test('killed in mid-build: every waiting request is refused, a new worker starts and answers', async () => {
  let building = 0;
  const { client, workers, states, state } = open({
    step: () => {
      building += 1;
      return workers.starts.length === 1 ? forever : undefined;
    },
  });
  const solid = outcome(client.solid(marked(1), HOLES));
  const file = client.file(marked(1), { format: 'step', holes: HOLES }).catch((e: ClientError) => e.failure);
  await until(() => expect(building).toBe(1));
  expect(state()).toMatchObject({ kernel: 'building' });
  workers.crash('broke off (out of memory)');
  expect(await Promise.all([solid, file])).toEqual([
    stopped('The exact solid broke off (out of memory).'),
    stopped('The exact solid broke off (out of memory).'),
  ]);
  expect(state()).toMatchObject({
    kernel: 'restarting',
    trouble: 'The exact solid broke off (out of memory). It is tried again.',
  });
  await until(() => expect(state()).toMatchObject({ kernel: 'ready', trouble: undefined }));
  expect(await outcome(client.solid(marked(2), HOLES))).toBe(2);
  expect([workers.starts.length, workers.ended()]).toEqual([2, 1]);
  expect(states.filter((s) => s.kernel === 'restarting')).toHaveLength(1);
});

test('a new worker is warmed up like the first', async () => {
  const warmUp = vi.fn(async () => {});
  const { workers, state } = open({ warmUp });
  await until(() => expect(warmUp).toHaveBeenCalledTimes(1));
  workers.crash('gone');
  await until(() => expect(state()).toMatchObject({ kernel: 'ready', trouble: undefined }));
  expect(warmUp).toHaveBeenCalledTimes(2);
});

test('a hang is ended, refused, and the next request answered', async () => {
  const { client, workers } = open({ step: () => (workers.starts.length === 1 ? forever : undefined) });
  const started = performance.now();
  expect(await outcome(client.solid(marked(1), HOLES))).toEqual(
    stopped('The exact solid took too long (over 0.2 s) and was stopped.'),
  );
  expect(performance.now() - started).toBeGreaterThan(190);
  expect(await outcome(client.solid(marked(2), HOLES))).toBe(2);
});

test('a hang in a build that is no longer wanted is ended too', async () => {
  let building = 0;
  const { client, workers } = open({
    step: () => {
      building += 1;
      return workers.starts.length === 1 ? forever : undefined;
    },
  });
  const first = outcome(client.solid(marked(1), HOLES));
  await until(() => expect(building).toBe(1));
  const second = outcome(client.solid(marked(2), HOLES));
  expect(await first).toEqual(superseded);
  expect(await second).toMatchObject({ kind: 'stopped' });
  expect(await outcome(client.solid(marked(3), HOLES))).toBe(3);
});

test('time spent waiting for another request is not counted as a hang', async () => {
  const { client } = open({ steps: 1, step: () => later(120) });
  const options = { format: 'stl', holes: HOLES } as const;
  const files = await Promise.all([1, 2, 3, 4].map((mark) => client.file(marked(mark), options)));
  expect(files).toHaveLength(4);
});

test('a worker past the heap limit is replaced after its answer, and what waits is not lost', async () => {
  let heap = 1.4e9;
  const workers = fakeWorkers({}, async (number) =>
    fakeGeometry({
      heapBytes: () => (number === 1 ? heap : 2e8),
      step: () => {
        heap += 0.1e9;
      },
    }),
  );
  const { client, states, state } = openOn(workers);
  const options = { format: 'step', holes: HOLES } as const;
  const [solid, file, second] = await Promise.all([
    outcome(client.solid(marked(1), HOLES)),
    client.file(marked(1), options),
    client.file(marked(2), options),
  ]);
  expect([solid, file.name, second.name]).toEqual([1, 'bridge.step', 'bridge.step']);
  expect([workers.starts.length, workers.ended()]).toEqual([2, 1]);
  await until(() => expect(state()).toMatchObject({ kernel: 'ready', heapBytes: 2e8 }));
  expect(states.filter((s) => s.kernel === 'restarting').map((s) => s.trouble)).toEqual([undefined]);
});

test('a worker below the heap limit is kept', async () => {
  const { client, workers } = open({ heapBytes: () => 1.5e9 });
  for (const mark of [1, 2, 3]) expect(await outcome(client.solid(marked(mark), HOLES))).toBe(mark);
  expect(workers.starts).toHaveLength(1);
});

const notLoaded = 'The exact solid could not be got ready (no such file).';
const failing = () => Promise.reject(new Error('no such file'));

test('a kernel that does not start is replaced at once by a plain one, and nobody is refused', async () => {
  const workers = fakeWorkers({}, async (number) => (number === 1 ? failing() : fakeGeometry({})));
  const { client, states } = openOn(workers);
  expect(await outcome(client.solid(marked(1), HOLES))).toBe(1);
  expect(workers.plain).toEqual([false, true]);
  expect(states.map((s) => s.kernel)).not.toContain('restarting');
  workers.crash('gone');
  expect(await outcome(client.solid(marked(2), HOLES))).toBe(2);
  expect(workers.plain, 'what failed once is not tried again').toEqual([false, true, true]);
});

test('a worker lost after it was ready is not to blame on the threads', async () => {
  const { client, workers } = open({});
  expect(await outcome(client.solid(marked(1), HOLES))).toBe(1);
  workers.crash('gone');
  expect(await outcome(client.solid(marked(2), HOLES))).toBe(2);
  expect(workers.plain).toEqual([false, false]);
});

test('a kernel that never starts is tried again after growing pauses, and the state says so', async () => {
  const workers = fakeWorkers({}, async (number) => (number <= 6 ? failing() : fakeGeometry({})));
  const { states, state } = openOn(workers);
  await until(() => expect(state()).toMatchObject({ kernel: 'ready', trouble: undefined }));
  const pauses = workers.starts.slice(1).map((start, i) => start - (workers.starts[i] ?? 0));
  // none for the plain one, none, 20, 40, 80, then never more than 80 (QUICK)
  for (const [i, least] of [0, 0, 19, 39, 79, 79].entries()) {
    expect(pauses[i], `pause ${i + 1} of ${pauses.map(Math.round)}`).toBeGreaterThanOrEqual(least);
  }
  expect(workers.starts).toHaveLength(7);
  expect(states.map((s) => s.trouble)).toContain(`${notLoaded} It is tried again in 0.1 s.`);
});

test('a request that meets a failing start is refused with the reason, one that waits out a pause is answered', async () => {
  const workers = fakeWorkers({}, async (number) => (number <= 3 ? failing() : fakeGeometry({})));
  const { client } = openOn(workers, { ...QUICK, pauseMs: 100 });
  expect(await outcome(client.solid(marked(1), HOLES))).toEqual(stopped(notLoaded));
  await until(() => expect(workers.ended()).toBe(3));
  expect(workers.starts).toHaveLength(3);
  expect(await outcome(client.solid(marked(2), HOLES))).toBe(2);
});

test('a worker that crashes each time it warms up does not restart without pause', async () => {
  const { workers } = open({
    warmUp: () => Promise.reject(new WebAssembly.RuntimeError('unreachable')),
  });
  await later(250);
  // none, 20, 40, 80, 80 ms: no more than seven starts fit into 250 ms
  expect(workers.starts.length).toBeGreaterThan(2);
  expect(workers.starts.length).toBeLessThan(8);
});

test('threads that never start give way to a plain worker, which has more time, and nobody is refused', async () => {
  const workers = fakeWorkers({}, async (number) => {
    if (number === 1) return forever;
    await later(150);
    return fakeGeometry({});
  });
  const { client } = openOn(workers, { ...QUICK, startMs: 50, plainStartMs: 5000 });
  expect(await outcome(client.solid(marked(1), HOLES))).toBe(1);
  expect(workers.plain).toEqual([false, true]);
});

test('a start that hangs is ended and tried again', async () => {
  const workers = fakeWorkers({}, (number) => (number <= 2 ? forever : Promise.resolve(fakeGeometry({}))));
  const { client } = openOn(workers, { ...QUICK, startMs: 100, plainStartMs: 100 });
  expect(await outcome(client.solid(marked(1), HOLES))).toEqual(
    stopped('The exact solid could not be got ready within 0.1 s.'),
  );
  expect(await outcome(client.solid(marked(2), HOLES))).toBe(2);
});

test('a worker that cannot even be made is a failed start like any other', async () => {
  const workers = fakeWorkers({});
  const forbidden = 'workers are forbidden here';
  let tries = 0;
  const opened = createClient(
    {
      draft: workers.draft,
      geometry: (heard, crashed, plain) => {
        tries += 1;
        if (tries <= 2) throw new Error(forbidden);
        return workers.geometry(heard, crashed, plain);
      },
    },
    QUICK,
  );
  client = opened;
  expect(await outcome(opened.solid(marked(1), HOLES))).toBe(1);
  expect(tries).toBe(3);
});

test('whatever an ended worker still says is not heard', async () => {
  let release = (): void => {};
  const released = new Promise<void>((resolve) => {
    release = resolve;
  });
  const { client, workers, states } = open({
    heapBytes: () => 1e8 * workers.starts.length,
    step: () => (workers.starts.length === 1 ? released : undefined),
  });
  const first = outcome(client.solid(marked(1), HOLES));
  await until(() => expect(states.at(-1)).toMatchObject({ kernel: 'building' }));
  workers.crash('gone');
  expect(await first).toEqual(stopped('The exact solid gone.'));
  expect(await outcome(client.solid(marked(2), HOLES))).toBe(2);
  const before = states.length;
  release();
  await later(30);
  expect(states.length, 'the late answer of the ended worker must change nothing').toBe(before);
});

test('closed, it ends its workers, refuses what waits and starts nothing more', async () => {
  const { client, workers } = open({ step: () => forever });
  const first = outcome(client.solid(marked(1), HOLES));
  await later(20);
  client.dispose();
  expect(await first).toEqual(stopped('The page was closed.'));
  expect(await outcome(client.solid(marked(2), HOLES))).toEqual(stopped('The page was closed.'));
  await later(50);
  expect([workers.starts.length, workers.ended()]).toEqual([1, 1]);
});

test('a listener that has left hears nothing more', async () => {
  const { client, state } = open({});
  const heard: ClientState[] = [];
  const leave = client.onState((s) => heard.push(s));
  leave();
  await until(() => expect(state()).toMatchObject({ kernel: 'ready' }));
  expect(heard.map((s) => s.kernel)).toEqual(['starting']);
});

test('a mesh for files drops no solid, nor is it dropped for one', async () => {
  const { client } = open({ steps: 2 });
  const [first, mesh, second, other] = await Promise.all([
    outcome(client.solid(marked(1), HOLES)),
    client.mesh(marked(2), HOLES),
    outcome(client.solid(marked(3), HOLES)),
    client.mesh(marked(4), HOLES),
  ]);
  expect([first, mesh.positions[0], second, other.positions[0]]).toEqual([superseded, 2, 3, 4]);
});
