import { expect, test, vi } from 'vitest';
import { DesignError, misfit } from '../../src/design/problem.ts';
import type { DraftCall, GeometryCall, Reply } from '../../workers/protocol.ts';
import { serve } from '../../workers/serve.ts';
import { fakeGeometry, fakeLine, fakeSolid, HOLES, marked, markOf, servedGeometry } from './fakeLine.ts';

const settled = (replies: readonly Reply<GeometryCall>[]) =>
  replies.filter((reply) => reply.kind === 'answer' || reply.kind === 'refused');

const until = (check: () => void) => vi.waitFor(check, { timeout: 5000, interval: 2 });

test('says that it is ready, warms up, then answers each request under its own number', async () => {
  const warmUp = vi.fn(async () => {});
  const { replies, solid, file } = servedGeometry({ warmUp });
  await until(() => expect(replies.map((r) => r.kind)).toEqual(['ready', 'warm']));
  expect(warmUp).toHaveBeenCalledOnce();
  solid(7);
  file(8);
  await until(() => expect(settled(replies)).toHaveLength(2));
  expect(replies.slice(2).map((r) => [r.kind, 'id' in r && r.id])).toEqual([
    ['taken', 7],
    ['answer', 7],
    ['taken', 8],
    ['answer', 8],
  ]);
  expect(settled(replies)).toMatchObject([{ answer: fakeSolid(7) }, { answer: { name: 'bridge.step' } }]);
});

test('every reply to a request says how much memory the kernel holds by then', async () => {
  let heap = 100;
  const { replies, solid, file } = servedGeometry({
    heapBytes: () => heap,
    step: () => {
      heap += 10;
    },
  });
  solid(1);
  file(2);
  await until(() => expect(settled(replies)).toHaveLength(2));
  expect(settled(replies).map((r) => r.heapBytes)).toEqual([130, 160]);
});

test('a request that waits while the worker loads is answered without a warm-up', async () => {
  const warmUp = vi.fn(async () => {});
  let loaded = (): void => {};
  const loading = new Promise<void>((resolve) => {
    loaded = resolve;
  });
  const { replies, solid } = servedGeometry({}, async () => {
    await loading;
    return fakeGeometry({ warmUp });
  });
  solid(1);
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(replies, 'nothing may be said before the worker has loaded').toEqual([]);
  loaded();
  await until(() => expect(settled(replies)).toMatchObject([{ kind: 'answer', id: 1 }]));
  expect(warmUp).not.toHaveBeenCalled();
});

test('a warm-up under way is told to make room for a request', async () => {
  const { replies, solid } = servedGeometry({
    warmUp: async (signal) => {
      while (!signal.abandoned) await new Promise((resolve) => setTimeout(resolve, 1));
      throw new Error('abandoned');
    },
  });
  await until(() => expect(replies.map((r) => r.kind)).toEqual(['ready']));
  solid(1);
  await until(() => expect(settled(replies)).toMatchObject([{ kind: 'answer', id: 1 }]));
});

test('a newer solid replaces one under way, between two of its features', async () => {
  const steps: number[] = [];
  const { replies, solid } = servedGeometry({
    steps: 5,
    step: ({ step }) => {
      steps.push(step);
      if (steps.length === 2) solid(2);
    },
  });
  solid(1);
  await until(() => expect(settled(replies)).toHaveLength(2));
  expect(settled(replies)).toMatchObject([
    { kind: 'refused', id: 1, failure: { kind: 'superseded' } },
    { kind: 'answer', id: 2, answer: fakeSolid(2) },
  ]);
  expect(steps.length, 'the first build must stop early: 5 steps each would be 10').toBeLessThan(9);
});

test('a solid that ends before it reads the signal is refused all the same', async () => {
  const { replies, solid } = servedGeometry({
    steps: 1,
    step: async () => {
      if (settled(replies).length > 0) return;
      solid(2);
      await new Promise((resolve) => setTimeout(resolve, 10));
    },
  });
  solid(1);
  await until(() => expect(settled(replies)).toHaveLength(2));
  expect(settled(replies)).toMatchObject([
    { kind: 'refused', id: 1, failure: { kind: 'superseded' } },
    { kind: 'answer', id: 2 },
  ]);
});

test('of 50 solids at once only the newest is answered, each other is refused as superseded', async () => {
  const { replies, solid } = servedGeometry({});
  for (let id = 1; id <= 50; id++) solid(id);
  await until(() => expect(settled(replies)).toHaveLength(50));
  const answers = settled(replies).filter((r) => r.kind === 'answer');
  expect(answers).toMatchObject([{ id: 50, answer: fakeSolid(50) }]);
  const superseded = settled(replies).filter((r) => r.kind === 'refused' && r.failure.kind === 'superseded');
  expect(new Set(superseded.map((r) => r.id)).size).toBe(49);
});

test('files are dropped neither for solids nor for each other', async () => {
  const { replies, solid, file } = servedGeometry({});
  for (const [i, ask] of [solid, file, solid, file, solid].entries()) ask(i + 1);
  await until(() => expect(settled(replies)).toHaveLength(5));
  const kinds = new Map(settled(replies).map((r) => [r.id, r.kind]));
  expect([...kinds].sort(([a], [b]) => a - b).map(([, kind]) => kind)).toEqual([
    'refused',
    'answer',
    'refused',
    'answer',
    'answer',
  ]);
});

test('a draft under way still answers, so that a steady stream of changes keeps the picture moving', async () => {
  const replies: Reply<DraftCall>[] = [];
  const line = fakeLine<DraftCall>((reply) => replies.push(reply));
  let inside = 0;
  void serve<DraftCall>(line.port, async () => ({
    threads: false,
    heapBytes: () => 0,
    warmUp: async () => {},
    answer: {
      draft: async ({ design }) => {
        inside += 1;
        await new Promise((resolve) => setTimeout(resolve, 15));
        return { mesh: fakeSolid(markOf(design)).mesh, volumeMm3: 1, ms: 15 };
      },
    },
    transfer: () => [],
  }));
  const draft = (id: number) => line.post({ id, call: 'draft', ask: { design: marked(id), holes: HOLES } });
  draft(1);
  await until(() => expect(inside).toBe(1));
  for (const id of [2, 3, 4]) draft(id);
  await until(() => expect(replies.filter((r) => r.kind === 'answer')).toHaveLength(2));
  expect(replies.filter((r) => r.kind === 'answer').map((r) => r.id)).toEqual([1, 4]);
  expect(replies.filter((r) => r.kind === 'refused').map((r) => r.id)).toEqual([2, 3]);
});

test('a design that cannot be made is refused with its problems', async () => {
  const problem = misfit('saddle.length', 200, 'at most 150 mm', 'Shorten the slot.');
  const { replies, solid } = servedGeometry({
    step: () => {
      throw new DesignError([problem]);
    },
  });
  solid(1);
  await until(() =>
    expect(settled(replies)).toMatchObject([{ id: 1, failure: { kind: 'design', problems: [problem] } }]),
  );
});

test('any other error becomes a refusal by the kernel, and the worker goes on', async () => {
  let first = true;
  const { replies, solid } = servedGeometry({
    step: () => {
      if (!first) return;
      first = false;
      throw new TypeError('the fillet came out empty');
    },
  });
  solid(1);
  solid(2);
  await until(() => expect(settled(replies)).toHaveLength(2));
  first = true;
  solid(3);
  await until(() => expect(settled(replies)).toHaveLength(3));
  expect(settled(replies).at(-1)).toMatchObject({
    id: 3,
    failure: { kind: 'kernel', message: expect.stringContaining('the fillet came out empty') },
  });
  solid(4);
  await until(() => expect(settled(replies).at(-1)).toMatchObject({ kind: 'answer', id: 4 }));
});

test('an answer that cannot be sent is refused, not lost', async () => {
  const { replies, solid } = servedGeometry({}, async () => ({
    ...fakeGeometry({}),
    transfer: () => [new Uint8Array(1) as unknown as Transferable],
  }));
  solid(1);
  await until(() => expect(settled(replies)).toMatchObject([{ id: 1, failure: { kind: 'kernel' } }]));
});

test.each([
  ['a trap in the kernel', new WebAssembly.RuntimeError('memory access out of bounds')],
  ['an exhausted stack', new RangeError('Maximum call stack size exceeded')],
  [
    'a trap behind another error',
    new Error('slot failed', { cause: new WebAssembly.RuntimeError('unreachable') }),
  ],
])('%s breaks the worker, which says so once and answers no more', async (_, error) => {
  const { replies, solid, ended } = servedGeometry({
    step: () => {
      throw error;
    },
  });
  solid(1);
  await ended;
  solid(2);
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(replies.at(-1)).toEqual({ kind: 'broken', message: `broke off (${error.message})` });
  expect(settled(replies)).toEqual([]);
});

test('a start that fails says why', async () => {
  const { replies, ended } = servedGeometry({}, () => Promise.reject(new Error('no such file: kernel.wasm')));
  await ended;
  await until(() =>
    expect(replies).toEqual([
      { kind: 'broken', message: 'could not be got ready (no such file: kernel.wasm)' },
    ]),
  );
});

test('a trap in the warm-up breaks the worker, a refusal does not', async () => {
  const trapped = servedGeometry({
    warmUp: () => Promise.reject(new WebAssembly.RuntimeError('unreachable')),
  });
  await trapped.ended;
  await until(() => expect(trapped.replies.map((r) => r.kind)).toEqual(['ready', 'broken']));
  const refused = servedGeometry({ warmUp: () => Promise.reject(new Error('the gate refused')) });
  await until(() => expect(refused.replies.map((r) => r.kind)).toEqual(['ready', 'warm']));
  refused.solid(1);
  await until(() => expect(settled(refused.replies)).toMatchObject([{ kind: 'answer' }]));
});

test('the buffers of an answer leave the worker instead of being copied', async () => {
  const { replies, solid } = servedGeometry({}, async () => {
    const service = fakeGeometry({});
    return {
      ...service,
      transfer: (answer) => {
        const list = service.transfer(answer);
        sent.push(...(list as ArrayBuffer[]));
        return list;
      },
    };
  });
  const sent: ArrayBuffer[] = [];
  solid(1);
  await until(() => expect(settled(replies)).toHaveLength(1));
  expect(sent.map((buffer) => buffer.byteLength)).toEqual([0]);
});
