import { expect, test } from 'vitest';
import { spacedLabels } from '../../../src/app/fit/spacedLabels.ts';

test('the wanted label is kept, and those that stand clear of it and of each other', () => {
  expect([...spacedLabels([0, 10, 30, 40, 60], 3, 20)]).toEqual([3, 0, 4]);
  expect([...spacedLabels([0, 30, 60], 0, 20)]).toEqual([0, 1, 2]);
  expect([...spacedLabels([60, 30, 0], 9, 20)], 'no such label').toEqual([0, 1, 2]);
});
