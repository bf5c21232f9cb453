import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { findKept } from '../../src/app/keep/findKept.ts';
import { keepDesign } from '../../src/app/keep/keepDesign.ts';
import { leftBehind } from '../../src/app/keep/leftBehind.ts';
import { type TabMemory, windowName } from '../../src/app/keep/windowName.ts';
import { createAppStore } from '../../src/app/store/store.ts';
import type { DesignText } from '../../src/design/design.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { shelfDouble } from './doubles.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const named = (name: string): DesignText => {
  const text = initialDesign();
  return { ...text, guitar: { ...text.guitar, name } };
};
const me = { own: 'me', before: 'me' };

/** The memory of one tab; a duplicated tab begins with a copy. */
const tab = (copied?: Map<string, string>): TabMemory & { readonly values: Map<string, string> } => {
  const values = new Map(copied);
  return {
    values,
    getItem: (key) => values.get(key) ?? null,
    setItem: (key, value) => void values.set(key, value),
  };
};

/** Names held by open windows. */
const locks = () => {
  const held = new Set<string>();
  return { held, claim: async (name: string) => !held.has(name) && held.add(name).has(name) };
};

describe('the window’s name', () => {
  test('outlives a reload', async () => {
    const { held, claim } = locks();
    const memory = tab();
    const first = await windowName(memory, claim);
    expect(first.before).toBeUndefined();
    held.clear();
    expect(await windowName(memory, claim)).toEqual({ own: first.own, before: first.own });
  });

  test('is a new one in a duplicated tab, which knows its twin’s', async () => {
    const { claim } = locks();
    const memory = tab();
    const first = await windowName(memory, claim);
    const copy = tab(memory.values);
    const twin = await windowName(copy, claim);
    expect(twin.own).not.toBe(first.own);
    expect(twin.before).toBe(first.own);
    expect((await windowName(tab(copy.values), async () => true)).own).toBe(twin.own);
  });
});

describe('keeping', () => {
  test('writes after a pause, and at once when the page is left', async () => {
    const { shelf, designs } = shelfDouble();
    const store = createAppStore({ text: named('Heron') });
    const { flush } = keepDesign(store, shelf, 'me', tab());
    await vi.advanceTimersByTimeAsync(0);
    expect(store.getState().session.keeping).toBe('kept');
    store.edit('top.tip', 4);
    expect(store.getState().session.keeping).toBe('writing');
    expect(designs.get('me')?.text).toMatchObject({ top: { tip: 3 } });
    await vi.advanceTimersByTimeAsync(500);
    expect(designs.get('me')?.text).toMatchObject({ top: { tip: 4 } });
    expect(store.getState().session.keeping).toBe('kept');
    store.edit('top.tip', '1/8 in');
    flush();
    await vi.advanceTimersByTimeAsync(0);
    expect(designs.get('me')?.text).toMatchObject({ top: { tip: '1/8 in' } });
  });

  test('a page that dies before its last change is written has left it in the tab', async () => {
    const { shelf, designs } = shelfDouble();
    const memory = tab();
    const store = createAppStore({ text: named('Heron') });
    const { flush } = keepDesign(store, shelf, 'me', memory);
    await vi.advanceTimersByTimeAsync(1000);
    const asWritten = new Map(designs);
    store.edit('top.tip', 'thin');
    flush();
    designs.clear();
    for (const [name, design] of asWritten) designs.set(name, design);
    const found = await findKept(shelf, me, leftBehind(memory));
    expect(found?.text.top.tip).toBe('thin');
    expect(found?.good?.top.tip).toBe(3);
  });

  test('what was left in the tab long ago gives way to what was written since', async () => {
    const { shelf } = shelfDouble();
    const memory = tab();
    const store = createAppStore({ text: named('Heron') });
    const { flush } = keepDesign(store, shelf, 'me', memory);
    store.edit('top.tip', 4);
    flush();
    store.edit('top.tip', 5);
    await vi.advanceTimersByTimeAsync(1000);
    expect((await findKept(shelf, me, leftBehind(memory)))?.text.top.tip).toBe(5);
    memory.setItem('pinbridge-left-behind', 'nonsense');
    expect((await findKept(shelf, me, leftBehind(memory)))?.text.top.tip).toBe(5);
  });

  test('keeps what can’t be made, with the last good design beside it, and brings both back', async () => {
    const { shelf } = shelfDouble();
    const store = createAppStore({ text: named('Heron') });
    const { flush } = keepDesign(store, shelf, 'me', tab());
    store.edit('top.tip', 'thin');
    flush();
    await vi.advanceTimersByTimeAsync(0);
    const found = await findKept(shelf, me, undefined);
    expect(found?.text.top.tip).toBe('thin');
    expect(found?.good?.top.tip).toBe(3);
  });

  test('brings back which file it is saved in, and whether it has changed since', async () => {
    const { shelf } = shelfDouble();
    const memory = tab();
    const store = createAppStore({ text: named('Heron') });
    const { flush } = keepDesign(store, shelf, 'me', memory);
    await vi.advanceTimersByTimeAsync(500);
    const saved = store.getState().history.present;
    store.setSession({ file: { name: 'Heron.json', handle: undefined, text: saved } });
    await vi.advanceTimersByTimeAsync(500);
    const same = await findKept(shelf, me, undefined);
    expect(same?.file?.name).toBe('Heron.json');
    expect(same?.file?.text, 'nothing has changed').toBe(same?.text);
    store.edit('top.tip', 4);
    flush();
    await vi.advanceTimersByTimeAsync(500);
    for (const found of [
      await findKept(shelf, me, undefined),
      await findKept(shelf, me, leftBehind(memory)),
    ]) {
      expect(found?.text.top.tip).toBe(4);
      expect(found?.file).toEqual({ name: 'Heron.json', text: saved });
    }
  });

  test('says so when the browser refuses, and goes on', async () => {
    const { shelf, control } = shelfDouble();
    control.refuses = true;
    const store = createAppStore({ text: named('Heron') });
    keepDesign(store, shelf, 'me', tab());
    await vi.advanceTimersByTimeAsync(0);
    expect(store.getState().session.keeping).toBe('refused');
    store.edit('top.tip', 4);
    await vi.advanceTimersByTimeAsync(500);
    expect(store.getState().session.keeping).toBe('refused');
    expect(store.getState().history.present.top.tip).toBe(4);
  });

  test('two windows don’t touch each other’s designs', async () => {
    const { shelf, designs } = shelfDouble();
    const [a, b] = [createAppStore({ text: named('Heron') }), createAppStore({ text: named('Wren') })];
    keepDesign(a, shelf, 'a', tab());
    keepDesign(b, shelf, 'b', tab());
    a.edit('top.tip', 4);
    b.edit('top.tip', 5);
    await vi.advanceTimersByTimeAsync(500);
    expect(designs.get('a')?.text).toMatchObject({ guitar: { name: 'Heron' }, top: { tip: 4 } });
    expect(designs.get('b')?.text).toMatchObject({ guitar: { name: 'Wren' }, top: { tip: 5 } });
  });
});

describe('finding', () => {
  const put = (designs: Map<string, object>, name: string, text: unknown, at: number) =>
    designs.set(name, { text, good: undefined, at });

  test('the window’s own design comes first, else the newest that can be read', async () => {
    const { shelf, designs } = shelfDouble();
    put(designs, 'me', named('mine'), 1);
    put(designs, 'other', named('newer'), 2);
    put(designs, 'broken', { format: 'something else' }, 3);
    expect((await findKept(shelf, me, undefined))?.text.guitar.name).toBe('mine');
    expect((await findKept(shelf, { own: 'new', before: 'me' }, undefined))?.text.guitar.name).toBe('mine');
    expect((await findKept(shelf, { own: 'new', before: undefined }, undefined))?.text.guitar.name).toBe(
      'newer',
    );
  });

  test('an empty shelf gives nothing, a refusing one rejects', async () => {
    const { shelf, control } = shelfDouble();
    expect(await findKept(shelf, me, undefined)).toBeUndefined();
    control.refuses = true;
    await expect(findKept(shelf, me, undefined)).rejects.toThrow('refused');
  });

  test('the oldest of many are taken off the shelf, but not the window’s own', async () => {
    const { shelf, designs } = shelfDouble();
    put(designs, 'me', named('mine'), 0);
    for (let i = 1; i <= 40; i++) put(designs, `w${i}`, named(`${i}`), i);
    expect((await findKept(shelf, me, undefined))?.text.guitar.name).toBe('mine');
    expect(designs.size).toBe(21);
    expect(designs.has('w40')).toBe(true);
    expect(designs.has('w1')).toBe(false);
  });
});
