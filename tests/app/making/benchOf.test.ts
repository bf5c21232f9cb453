import { describe, expect, test } from 'vitest';
import { benchBefore, benchOf } from '../../../src/app/making/benchOf.ts';
import type { Bench, Benches } from '../../../src/app/store/state.ts';

const bench = (part: Partial<Bench>): Bench => ({
  name: 'Heron',
  workshop: {},
  ticked: [],
  measured: {},
  at: 0,
  ...part,
});

describe('the bench of a design', () => {
  const benches: Benches = {
    aaaaaaaa: bench({ ticked: ['blank'], workshop: { baseWidth: '90' }, at: 1 }),
    bbbbbbbb: bench({ measured: { 'slot.depth': '5.7' }, workshop: { baseWidth: '110' }, at: 2 }),
    cccccccc: bench({ workshop: { baseWidth: '120' }, at: 3 }),
  };

  test('is its own where there is one', () => {
    expect(benchOf(benches, 'aaaaaaaa', 'Heron')).toBe(benches.aaaaaaaa);
  });

  test('else is fresh, in the workshop that was last worked in', () => {
    expect(benchOf(benches, 'dddddddd', 'Wren')).toEqual(
      bench({ name: 'Wren', workshop: { baseWidth: '120' } }),
    );
    expect(benchOf({}, 'dddddddd', 'Wren')).toEqual(bench({ name: 'Wren' }));
  });

  test('may be taken over from the newest other one with work on it, but not over work of its own', () => {
    expect(benchBefore(benches, 'dddddddd')?.fingerprint).toBe('bbbbbbbb');
    expect(benchBefore(benches, 'cccccccc')?.fingerprint, 'a workshop alone is no work').toBe('bbbbbbbb');
    expect(benchBefore(benches, 'aaaaaaaa')).toBeUndefined();
    expect(benchBefore({ cccccccc: bench({}) }, 'dddddddd')).toBeUndefined();
  });
});
