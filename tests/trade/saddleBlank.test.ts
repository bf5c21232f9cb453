import { expect, test } from 'vitest';
import { saddleBlank } from '../../src/trade/saddleBlank.ts';

test('the blank goes into its slot, and is higher than the finished saddle (allowances: common practice)', () => {
  const blank = saddleBlank(74, 3.2, 9.2);
  expect(blank.length).toEqual({ least: 73.5, most: 74 });
  expect(blank.thickness.most).toBe(3.2);
  expect(blank.thickness.least).toBeCloseTo(3.15, 12);
  expect(blank.height).toBeCloseTo(9.7, 12);
  expect(blank.finished).toBe(9.2);
});
