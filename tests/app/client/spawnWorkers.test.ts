import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { spawnWorkers } from '../../../src/app/client/spawnWorkers.ts';
import { ONE_THREAD } from '../../../workers/protocol.ts';

/** Stands for the browser's own. */
class FakeWorker {
  static made: FakeWorker[] = [];
  onmessage: ((event: { data: unknown }) => void) | null = null;
  onerror: ((event: { message?: string; preventDefault(): void }) => void) | null = null;
  onmessageerror: (() => void) | null = null;
  readonly posted: unknown[] = [];
  ended = false;
  constructor(
    readonly url: URL,
    readonly options: WorkerOptions,
  ) {
    FakeWorker.made.push(this);
  }
  postMessage(message: unknown) {
    this.posted.push(message);
  }
  terminate() {
    this.ended = true;
  }
}

beforeEach(() => {
  FakeWorker.made = [];
  vi.stubGlobal('Worker', FakeWorker);
});
afterEach(() => vi.unstubAllGlobals());

function spawned(which: 'draft' | 'geometry', plain = false) {
  const heard = vi.fn();
  const crashed = vi.fn();
  const handle = spawnWorkers[which](heard, crashed, plain);
  const [worker] = FakeWorker.made;
  if (!worker) throw new Error('no worker was made');
  return { handle, worker, heard, crashed };
}

test('each line has a module worker of its own', () => {
  expect(spawned('draft').worker).toMatchObject({ options: { type: 'module' } });
  expect(FakeWorker.made[0]?.url.pathname).toMatch(/\/workers\/draft\.worker\.ts$/);
  spawned('geometry');
  expect(FakeWorker.made[1]?.url.pathname).toMatch(/\/workers\/geometry\.worker\.ts$/);
});

test('only a plain geometry worker has the name that means one thread', () => {
  expect(spawned('geometry', false).worker.options.name).not.toBe(ONE_THREAD);
  FakeWorker.made = [];
  expect(spawned('geometry', true).worker.options.name).toBe(ONE_THREAD);
});

test('messages go both ways, and an end ends it', () => {
  const { handle, worker, heard } = spawned('geometry');
  const request = { id: 1, call: 'solid', ask: {} } as never;
  handle.post(request);
  expect(worker.posted).toEqual([request]);
  worker.onmessage?.({ data: { kind: 'taken', id: 1 } });
  expect(heard).toHaveBeenCalledWith({ kind: 'taken', id: 1 });
  handle.end();
  expect(worker.ended).toBe(true);
});

test('a crash, a script that is not there, and an unreadable message each say what happened', () => {
  const { worker, crashed } = spawned('geometry');
  const preventDefault = vi.fn();
  worker.onerror?.({ message: 'out of memory', preventDefault });
  worker.onerror?.({ preventDefault });
  worker.onmessageerror?.();
  expect(crashed.mock.calls).toEqual([
    ['broke off (out of memory)'],
    ['could not be got ready (its program was not loaded)'],
    ['broke off (its answer could not be read)'],
  ]);
  expect(preventDefault).toHaveBeenCalledTimes(2);
});
