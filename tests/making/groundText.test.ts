import { expect, test } from 'vitest';
import { groundText } from '../../src/making/groundText.ts';
import { bench } from './onBench.ts';

const one = bench({ 'footprint.length': 150, 'saddle.slotWidth': 3 }, { finishAllowance: 0.1 });
const said = (id: string) => groundText(one.setting(id));

test('what was typed is as designed or as set, and derived by nobody', () => {
  expect(said('drilling.diameter')).toBe('as designed. Tolerance: own: the reamer must find wood all round.');
  expect(said('finishing.allowance')).toBe('as set in the workshop: left at every step before.');
  expect(said('wings.blend')).toBe('as designed.');
});

test('what is worked out is derived here, what is usual is common practice', () => {
  expect(said('outline.length')).toContain('150 finished + 2 × 0.1 for finishing; derived here.');
  expect(said('finishing.grit')).toBe('then buffed; common practice.');
});

test('the standard was read in a quotation, and is shown so', () => {
  expect(said('check.length')).toBe('as designed. Tolerance: ISO 2768-m (read in a quotation).');
});
