import { afterAll, expect, test, vi } from 'vitest';
import { type Client, type ClientState, createClient, LIMITS } from '../../src/app/client/client.ts';
import { ClientError } from '../../src/app/client/clientError.ts';
import type { DesignText } from '../../src/design/design.ts';
import type { Failure, GeometryCall, Solid } from '../../workers/protocol.ts';
import { designText } from '../support/change.ts';
import { IMPOSSIBLE } from './impossible.ts';
import { nodeWorkers } from './nodeWorker.ts';

// The exact kernel in a real thread behind the app's own client: what the page does, without a page.

const threads = nodeWorkers<GeometryCall>('geometryThread.ts');
// A busy machine may take far longer than the app would wait.
const patient = { ...LIMITS, answerMs: { draft: 300_000, solid: 300_000, file: 300_000, mesh: 300_000 } };
const client: Client = createClient(
  { geometry: threads.spawn, draft: () => ({ post: () => {}, end: () => {} }) },
  patient,
);
let state: ClientState | undefined;
client.onState((s) => {
  state = s;
});
afterAll(() => client.dispose());

const thick = (thickness: number): DesignText => {
  const design = designText();
  return { ...design, top: { ...design.top, thickness } };
};
const named = (name: string): DesignText => {
  const design = designText();
  return { ...design, guitar: { ...design.guitar, name } };
};
const solid = (design: DesignText) => client.solid(design, 'reamed');

const failure = async (answer: Promise<unknown>): Promise<Failure | undefined> => {
  try {
    await answer;
    return undefined;
  } catch (error) {
    if (error instanceof ClientError) return error.failure;
    throw error;
  }
};

/** What must not change in a solid that is on the screen, whatever happens to the worker. */
const print = ({ mesh, figures }: Solid) => ({
  figures: { ...figures },
  sums: [mesh.positions, mesh.normals, mesh.triangles, mesh.edges].map((list) => {
    let sum = 0;
    for (const value of list) sum += value;
    return [list.length, sum];
  }),
});

test('an exact solid crosses from the thread with its mesh, its figures and the memory held', async () => {
  const { mesh, figures, ms, threads: several } = await solid(thick(9.5));
  expect(figures).toMatchObject({ valid: true, throughHoles: 6 });
  expect(mesh.triangles.length / 3).toBeGreaterThan(3000);
  expect(Math.max(...mesh.triangles)).toBe(mesh.positions.length / 3 - 1);
  expect(ms).toBeGreaterThan(0);
  expect(several).toBe(false);
  expect(state).toMatchObject({ kernel: 'ready', threads: false });
  expect(state?.heapBytes, 'the kernel starts with 100 MB').toBeGreaterThan(1e8);
});

test('50 changes in a second: the last is answered with its own solid, 49 are superseded', async () => {
  const outcomes: Promise<Failure | undefined>[] = [];
  let last: Promise<Solid> | undefined;
  for (let i = 1; i <= 50; i++) {
    last = solid(thick(9 + i / 100));
    outcomes.push(failure(last));
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  const failures = await Promise.all(outcomes);
  expect(failures).toEqual([...Array(49).fill({ kind: 'superseded' }), undefined]);
  const answer = await last;
  expect(answer?.figures.boxMm[5], 'the crown of the last design stands at its own thickness').toBeCloseTo(
    9.5,
    6,
  );
  expect(threads.started(), 'no worker may be lost on the way').toBe(1);
});

test('files come from the exact solid, also while solids are asked for', async () => {
  const step = client.file(named('Concert 14'), { format: 'step', holes: 'drilled' });
  const shown = solid(thick(9.1));
  const stl = client.file(named('Concert 14'), { format: 'stl', holes: 'reamed', deviationMm: 0.05 });
  const [stepFile, stlFile] = await Promise.all([step, stl]);
  expect((await shown).figures.valid).toBe(true);
  const text = new TextDecoder().decode(stepFile.bytes);
  expect(text.startsWith('ISO-10303-21;')).toBe(true);
  expect(text).toContain("'Concert 14'");
  const facets = new DataView(stlFile.bytes.buffer, stlFile.bytes.byteOffset).getUint32(80, true);
  expect(stlFile.bytes.length, 'binary STL is 84 bytes and 50 a facet').toBe(84 + 50 * facets);
  expect([stepFile.name, stlFile.name].map((name) => name.split('.').at(-1))).toEqual(['step', 'stl']);
});

test('a design that cannot be made comes back with its problems', async () => {
  expect(await failure(solid(thick(200)))).toMatchObject({
    kind: 'design',
    problems: [{ code: 'out-of-range', path: 'top.thickness' }],
  });
});

test('killed in mid-build: refused as stopped, the last good solid untouched, the next one right', async () => {
  const good = await solid(thick(9.5));
  const before = print(good);
  const started = threads.started();
  const lost = failure(solid(thick(10)));
  const file = failure(client.file(thick(10), { format: 'step', holes: 'drilled' }));
  await vi.waitFor(() => expect(state?.kernel).toBe('building'));
  await new Promise((resolve) => setTimeout(resolve, good.ms / 4));
  await threads.kill();
  expect(await Promise.all([lost, file])).toEqual([
    { kind: 'stopped', message: 'The exact solid ended.' },
    { kind: 'stopped', message: 'The exact solid ended.' },
  ]);
  expect(state).toMatchObject({ kernel: 'restarting', trouble: 'The exact solid ended. It is tried again.' });
  expect(print(good)).toEqual(before);
  const again = await solid(thick(9.5));
  expect(again.figures.volumeMm3).toBeCloseTo(good.figures.volumeMm3, 6);
  expect(threads.started()).toBe(started + 1);
});

test('asked for an impossible edge: a typed refusal, the last good solid untouched, the next one right', async () => {
  const good = await solid(thick(9.6));
  const before = print(good);
  const refused = await failure(solid(named(IMPOSSIBLE)));
  expect(refused).toMatchObject({ kind: 'kernel', message: expect.stringMatching(/^body: ./) });
  expect(print(good)).toEqual(before);
  expect((await solid(thick(9.6))).figures.volumeMm3).toBeCloseTo(good.figures.volumeMm3, 6);
});
