import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { changeBench, rememberedBenches } from '../../../src/app/keep/benches.ts';
import { rememberedPapers, rememberPapers } from '../../../src/app/keep/papers.ts';
import type { Bench, Benches } from '../../../src/app/store/state.ts';

let kept = new Map<string, string>();
beforeEach(() => {
  kept = new Map();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  });
});
afterEach(() => vi.unstubAllGlobals());

const bench = (at: number): Bench => ({
  name: 'Heron',
  workshop: { baseWidth: '110' },
  ticked: ['blank'],
  measured: { 'slot.depth': '5.7' },
  at,
});
const KEY = 'pinbridge-benches';

describe('benches in this browser', () => {
  test('come back as they were kept, beside what another window wrote', () => {
    changeBench({}, 'aaaaaaaa', () => bench(1));
    // another window knows nothing of the first
    expect(Object.keys(changeBench({}, 'bbbbbbbb', () => bench(2))).sort()).toEqual(['aaaaaaaa', 'bbbbbbbb']);
    expect(rememberedBenches()).toEqual({ aaaaaaaa: bench(1), bbbbbbbb: bench(2) });
  });

  test('change as another window left them: neither’s ticks are lost', () => {
    const tick = (known: Benches, step: string) =>
      changeBench(known, 'aaaaaaaa', ({ aaaaaaaa: now = bench(1) }) => ({
        ...now,
        ticked: [...now.ticked, step],
      }));
    const first = tick({}, 'thickness');
    // a second window that was opened before
    tick({}, 'outline');
    expect(tick(first, 'drilling').aaaaaaaa?.ticked).toEqual(['blank', 'thickness', 'outline', 'drilling']);
  });

  test('leave out a workshop’s field that is not known, and a time that is to come', () => {
    const odd = { ...bench(1), workshop: { baseWidth: '90', stick: '1' } };
    kept.set(KEY, JSON.stringify({ odd, tomorrow: bench(1e308), never: bench(-1) }));
    expect(rememberedBenches()).toEqual({ odd: { ...bench(1), workshop: { baseWidth: '90' } } });
  });

  test('are as many as there is room for, the newest ones', () => {
    for (let i = 1; i <= 70; i++) changeBench({}, `design-${i}`, () => bench(i));
    const names = Object.keys(rememberedBenches());
    expect(names).toHaveLength(60);
    expect(names).not.toContain('design-10');
    expect(names).toContain('design-11');
  });

  test('leave out what is none, and keep the rest', () => {
    const odd = {
      ...bench(3),
      ticked: ['blank', 7],
      measured: { 'slot.depth': '5', 'slot.width': { x: 1 } },
    };
    kept.set(KEY, JSON.stringify({ good: bench(1), odd, none: 5, older: { name: 'x' }, list: [] }));
    expect(rememberedBenches()).toEqual({
      good: bench(1),
      odd: { ...bench(3), measured: { 'slot.depth': '5' } },
    });
    for (const wreck of ['{', '[]', '"x"', 'null']) {
      kept.set(KEY, wreck);
      expect(rememberedBenches(), wreck).toEqual({});
    }
  });

  test('live in the page alone where the browser refuses', () => {
    vi.stubGlobal('localStorage', undefined);
    expect(rememberedBenches()).toEqual({});
    expect(changeBench({ aaaaaaaa: bench(1) }, 'bbbbbbbb', () => bench(2))).toEqual({
      aaaaaaaa: bench(1),
      bbbbbbbb: bench(2),
    });
  });
});

test('paper and units come back, and the usual ones where something else stands in their place', () => {
  const usual = { paper: 'A4', units: 'mm' };
  expect(rememberedPapers()).toEqual(usual);
  rememberPapers({ paper: 'Letter', units: 'in' });
  expect(rememberedPapers()).toEqual({ paper: 'Letter', units: 'in' });
  for (const wreck of [
    '{',
    '{"paper":"toString","units":"ft"}',
    '{"paper":["A4"],"units":["in"]}',
    '{"paper":["Letter"]}',
    '7',
    'null',
  ]) {
    kept.set('pinbridge-papers', wreck);
    expect(rememberedPapers(), wreck).toEqual(usual);
  }
});
