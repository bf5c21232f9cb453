import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { ClientState } from '../../src/app/client/client.ts';
import { keepBuilding } from '../../src/app/part/keepBuilding.ts';
import { shownPart } from '../../src/app/store/shownPart.ts';
import { createAppStore } from '../../src/app/store/store.ts';
import { initialDesign } from '../../src/design/initial.ts';
import type { Failure } from '../../workers/protocol.ts';
import { aDraft, aSolid, clientDouble } from './doubles.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function bench() {
  const store = createAppStore({ text: initialDesign() });
  const double = clientDouble();
  const building = keepBuilding(store, double.client);
  /** Lets answers arrive. */
  const settle = () => vi.advanceTimersByTimeAsync(0);
  const rest = () => vi.advanceTimersByTimeAsync(1000);
  const shown = () => shownPart(store.getState());
  return { store, building, settle, rest, shown, ...double };
}

test('the draft is asked for at once, the exact solid when the design has rested', async () => {
  const { drafts, solids, rest, settle, shown } = bench();
  expect(drafts.length).toBe(1);
  expect(solids.length).toBe(0);
  expect(shown().stamp).toBe('none');
  const draft = aDraft(31_000);
  drafts[0]?.answer(draft);
  await settle();
  expect(shown()).toMatchObject({ stamp: 'draft', ms: 15, solid: undefined });
  expect(shown().mesh).toBe(draft.mesh);
  await rest();
  expect(solids.length).toBe(1);
  const solid = aSolid(31_010);
  solids[0]?.answer(solid);
  await settle();
  expect(shown()).toMatchObject({ stamp: 'solid', ms: 310 });
  expect(shown().solid).toBe(solid);
});

test('every change asks for a draft, and only the last one for a solid', async () => {
  const { store, drafts, solids, rest } = bench();
  for (let i = 0; i < 50; i++) {
    store.edit('top.tip', 3 + i / 100);
    await vi.advanceTimersByTimeAsync(20);
  }
  expect(drafts.length).toBe(50);
  await rest();
  expect(solids.map(({ text }) => text.top.tip)).toEqual([3.49]);
});

test('an exact solid that comes for an older design is not shown as current', async () => {
  const { store, drafts, solids, rest, settle, shown } = bench();
  await rest();
  store.edit('top.tip', 4);
  solids[0]?.answer(aSolid(1));
  await settle();
  expect(shown()).toMatchObject({ stamp: 'draft', solid: undefined });
  const draft = aDraft(2);
  drafts[1]?.answer(draft);
  await settle();
  expect(shown().mesh).toBe(draft.mesh);
});

test('what can’t be made is not asked for; the last good part stays, marked as not current', async () => {
  const { store, drafts, solids, rest, settle, shown } = bench();
  const solid = aSolid(1);
  await rest();
  solids[0]?.answer(solid);
  await settle();
  store.edit('top.tip', 99);
  await rest();
  expect(drafts.length).toBe(1);
  expect(solids.length).toBe(1);
  expect(shown()).toMatchObject({ stamp: 'stale', solid: undefined });
  expect(shown().mesh).toBe(solid.mesh);
  store.undo();
  await rest();
  expect(solids.length, 'the solid of this very design is still there').toBe(1);
  expect(shown().stamp).toBe('solid');
});

test('a page that begins with what can’t be made shows the last good design beside it', async () => {
  const good = initialDesign();
  const store = createAppStore({ text: { ...good, top: { ...good.top, tip: 'thin' } }, good });
  const { client, drafts } = clientDouble();
  keepBuilding(store, client);
  expect(drafts.map(({ text }) => text)).toEqual([good]);
  drafts[0]?.answer(aDraft(1));
  await vi.advanceTimersByTimeAsync(0);
  expect(shownPart(store.getState()).stamp).toBe('stale');
});

test('a refused solid leaves the draft and says why, until the design changes or it is asked for again', async () => {
  const { store, building, drafts, solids, rest, settle, shown } = bench();
  drafts[0]?.answer(aDraft(1));
  await rest();
  solids[0]?.refuse({ kind: 'kernel', message: 'The blend would not close.' });
  await settle();
  expect(shown()).toMatchObject({ stamp: 'draft', trouble: { kind: 'kernel' } });
  building.again();
  expect(shown().trouble).toBeUndefined();
  await rest();
  expect(solids.length).toBe(2);
  solids[1]?.refuse({ kind: 'kernel', message: 'The blend would still not close.' });
  await settle();
  expect(shown().trouble).toMatchObject({ message: 'The blend would still not close.' });
  store.edit('top.tip', 4);
  expect(shown().trouble).toBeUndefined();
});

const restarting: ClientState = { kernel: 'restarting', threads: true, heapBytes: 5, trouble: 'It crashed.' };
const ready: ClientState = { ...restarting, kernel: 'ready' };
const lost: Failure = { kind: 'stopped', message: 'The kernel was lost.' };

test('a solid lost with its kernel is asked for again when the kernel is ready, the last good one shown meanwhile', async () => {
  const { store, drafts, solids, rest, settle, shown, say } = bench();
  await rest();
  const good = aSolid(1);
  solids[0]?.answer(good);
  await settle();
  store.edit('top.tip', 4);
  drafts[1]?.refuse(lost);
  await rest();
  say(restarting);
  solids[1]?.refuse(lost);
  await rest();
  expect(shown(), 'the last good solid').toMatchObject({ stamp: 'stale', mesh: good.mesh, solid: undefined });
  expect(solids.length, 'nothing is asked of a kernel that starts').toBe(2);
  say(ready);
  expect(solids.slice(2).map(({ text }) => text.top.tip)).toEqual([4]);
  say({ ...ready, kernel: 'building' });
  await rest();
  expect(shown().mesh).toBe(good.mesh);
  const solid = aSolid(2);
  solids[2]?.answer(solid);
  await settle();
  expect(shown()).toMatchObject({ stamp: 'solid', solid, trouble: undefined });
  expect(solids.length).toBe(3);
});

test('while the lost solid waits for its kernel, the draft says that it follows', async () => {
  const { drafts, solids, rest, settle, shown, say } = bench();
  drafts[0]?.answer(aDraft(1));
  await rest();
  say(restarting);
  solids[0]?.refuse(lost);
  await settle();
  expect(shown()).toMatchObject({ stamp: 'draft', trouble: undefined });
});

test('a design that loses the kernel twice is left to the person, whatever the kernel does', async () => {
  const { building, solids, rest, settle, shown, say } = bench();
  await rest();
  const lose = async () => {
    say(restarting);
    solids.at(-1)?.refuse(lost);
    await settle();
  };
  await lose();
  say(ready);
  await lose();
  expect(shown().trouble, 'the press is there').toMatchObject(lost);
  for (let i = 0; i < 5; i++) {
    say(restarting);
    say(ready);
    await rest();
  }
  expect(solids.length).toBe(2);
  building.again();
  await rest();
  expect(solids.length).toBe(3);
  await lose();
  say(ready);
  await rest();
  expect(solids.length).toBe(3);
  expect(shown().trouble).toMatchObject(lost);
});

test('a lost solid that is no longer wanted is not asked for again', async () => {
  const { store, solids, rest, settle, say } = bench();
  await rest();
  say(restarting);
  solids[0]?.refuse(lost);
  await settle();
  store.edit('top.tip', 4);
  await rest();
  say(ready);
  await rest();
  expect(solids.map(({ text }) => text.top.tip)).toEqual([initialDesign().top.tip, 4]);
});

test('a design changed while its solid is being lost is asked for once, as it now is', async () => {
  const { store, solids, rest, settle, say } = bench();
  await rest();
  store.edit('top.tip', 4);
  say(restarting);
  solids[0]?.refuse(lost);
  await settle();
  say(ready);
  await rest();
  expect(solids.map(({ text }) => text.top.tip)).toEqual([initialDesign().top.tip, 4]);
});

test('what the kernel itself refused is not asked for again when it is ready', async () => {
  const { solids, rest, settle, shown, say } = bench();
  await rest();
  say({ ...ready, kernel: 'building' });
  solids[0]?.refuse({ kind: 'kernel', message: 'The blend would not close.' });
  await settle();
  say(ready);
  await rest();
  expect(solids.length).toBe(1);
  expect(shown().trouble).toMatchObject({ kind: 'kernel' });
});

test('a question that a newer one replaced is no trouble', async () => {
  const { drafts, settle, shown } = bench();
  drafts[0]?.refuse({ kind: 'superseded' });
  await settle();
  expect(shown().trouble).toBeUndefined();
});

test('a refused draft of a part on the screen marks it as not current', async () => {
  const { store, drafts, settle, shown } = bench();
  drafts[0]?.answer(aDraft(1));
  await settle();
  store.edit('top.tip', 4);
  drafts[1]?.refuse({ kind: 'stopped', message: 'The quick picture was lost.' });
  await settle();
  expect(shown()).toMatchObject({ stamp: 'stale', trouble: { kind: 'stopped' } });
});

test('holes as reamed are another part', async () => {
  const { store, drafts, solids, rest, settle, shown } = bench();
  await rest();
  solids[0]?.answer(aSolid(1));
  await settle();
  store.setSession({ holes: 'reamed' });
  expect(drafts.at(-1)?.holes).toBe('reamed');
  expect(shown().solid).toBeUndefined();
  await rest();
  expect(solids.at(-1)?.holes).toBe('reamed');
});

test('selecting and folding ask for nothing', async () => {
  const { store, drafts, solids, rest } = bench();
  await rest();
  store.select('top.tip');
  store.toggleGroup('pins');
  store.setSession({ share: 0.4 });
  await rest();
  expect([drafts.length, solids.length]).toEqual([1, 1]);
});

test('the kernel’s state reaches the store; after the end nothing does', async () => {
  const { store, building, drafts, settle, say, shown } = bench();
  say({ kernel: 'building', threads: true, heapBytes: 5, trouble: undefined });
  expect(store.getState().kernel).toMatchObject({ kernel: 'building', threads: true });
  building.stop();
  drafts[0]?.answer(aDraft(1));
  say({ kernel: 'ready', threads: true, heapBytes: 5, trouble: undefined });
  await settle();
  expect(store.getState().kernel.kernel).toBe('building');
  expect(shown().stamp).toBe('none');
});
