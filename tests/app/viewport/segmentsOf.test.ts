import { expect, test } from 'vitest';
import { segmentsOf } from '../../../src/app/viewport/segmentsOf.ts';

test('each step of each line is a segment, and lines are not joined', () => {
  const lines = [
    [
      [0, 0, 0],
      [1, 0, 0],
      [1, 2, 0],
    ],
    [
      [5, 5, 5],
      [6, 5, 5],
    ],
  ] as const;
  expect([...segmentsOf(lines)]).toEqual([0, 0, 0, 1, 0, 0, 1, 0, 0, 1, 2, 0, 5, 5, 5, 6, 5, 5]);
  expect([...segmentsOf([])]).toEqual([]);
});
