import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { rememberBench, rememberedBenches } from '../../../src/app/keep/benches.ts';
import { rememberedPapers, rememberPapers } from '../../../src/app/keep/papers.ts';
import type { Bench } from '../../../src/app/store/state.ts';

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
    rememberBench({}, 'aaaaaaaa', bench(1));
    // another window knows nothing of the first
    expect(Object.keys(rememberBench({}, 'bbbbbbbb', bench(2))).sort()).toEqual(['aaaaaaaa', 'bbbbbbbb']);
    expect(rememberedBenches()).toEqual({ aaaaaaaa: bench(1), bbbbbbbb: bench(2) });
  });

  test('are as many as there is room for, the newest ones', () => {
    for (let i = 1; i <= 70; i++) rememberBench({}, `design-${i}`, bench(i));
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
    expect(rememberBench({ aaaaaaaa: bench(1) }, 'bbbbbbbb', bench(2))).toEqual({
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
  for (const wreck of ['{', '{"paper":"toString","units":"ft"}', '7', 'null']) {
    kept.set('pinbridge-papers', wreck);
    expect(rememberedPapers(), wreck).toEqual(usual);
  }
});
