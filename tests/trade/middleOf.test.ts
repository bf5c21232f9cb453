import { describe, expect, test } from 'vitest';
import { middleOf } from '../../src/trade/middleOf.ts';

describe('a value on the centre line', () => {
  test('is half way between the two middle strings of six', () => {
    expect(middleOf([27.5, 16.5, 5.5, -5.5, -16.5, -27.5], [9, 9, 3, 4, 9, 9])).toBeCloseTo(3.5, 12);
  });

  test('is nearer to the nearer string, for either hand', () => {
    expect(middleOf([10, 2, -6], [0, 1, 5])).toBeCloseTo(2, 12);
    expect(middleOf([-10, -2, 6], [0, 1, 5])).toBeCloseTo(2, 12);
  });

  test('is the string’s own that lies there, the last one too', () => {
    expect(middleOf([20, 0, -20], [1, 7, 3])).toBe(7);
    expect(middleOf([20, 10, 0], [1, 7, 3])).toBe(3);
  });

  test('is refused where all strings lie to one side', () => {
    expect(() => middleOf([20, 10, 5], [1, 2, 3])).toThrow(RangeError);
    expect(() => middleOf([], [])).toThrow(RangeError);
  });
});
