import { expect, test } from 'vitest';
import { KernelError } from '../../models/kernel/kernelError.ts';
import { kernelSource } from '../../src/cli/kernelSource.ts';
import type { Geometry } from '../../workers/geometry.ts';

function counted(heap: () => number) {
  const seen = { loaded: 0, disposed: 0 };
  const source = kernelSource(async () => {
    seen.loaded++;
    const unused = () => Promise.reject(new Error('not asked for in this test'));
    return {
      threads: false,
      heapBytes: heap,
      solid: unused,
      file: unused,
      warmUp: unused,
      dispose: () => {
        seen.disposed++;
      },
    } satisfies Geometry;
  });
  return { seen, source };
}

test('one kernel serves many designs, also after a refusal', async () => {
  const { seen, source } = counted(() => 1e8);
  await source.use(async () => {});
  const refusal = new KernelError('edge', 'it does not fit');
  await expect(source.use(() => Promise.reject(refusal))).rejects.toBe(refusal);
  await source.use(async () => {});
  expect(seen).toEqual({ loaded: 1, disposed: 0 });
});

test('a kernel that has grown too large is put away for a new one', async () => {
  let bytes = 1e8;
  const { seen, source } = counted(() => bytes);
  await source.use(async () => {});
  bytes = 1.6e9;
  await source.use(async () => {});
  expect(seen).toEqual({ loaded: 2, disposed: 1 });
});

test('after a trap the next design gets a new kernel', async () => {
  const { seen, source } = counted(() => 1e8);
  const trap = new KernelError('edge', 'unreachable', new WebAssembly.RuntimeError('unreachable'));
  await expect(source.use(() => Promise.reject(trap))).rejects.toBe(trap);
  await source.use(async () => {});
  expect(seen).toEqual({ loaded: 2, disposed: 0 });
});
