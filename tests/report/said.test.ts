import { expect, test } from 'vitest';
import { above, below, fixed, fromTo, measure, mm, plain, said, signed } from '../../src/report/said.ts';

test('a number is said without needless decimals, with a true minus and its unit', () => {
  expect([2, 2.5, 2.504, 100, -0.25, -0.001, 1050.1].map(mm)).toEqual([
    '2 mm',
    '2.5 mm',
    '2.5 mm',
    '100 mm',
    '−0.25 mm',
    '0 mm',
    '1050.1 mm',
  ]);
  expect(said(14.94, '°', 1)).toBe('14.9°');
  expect(said(120, 'cents', 0)).toBe('120 cents');
  expect(said(0.5, '')).toBe('0.5');
});

test('a number with as many decimals as asked for, and with its sign', () => {
  expect([-5.966, -0.004, 4].map((value) => fixed(value, 2))).toEqual(['−5.97', '0.00', '4.00']);
  expect([-0.5, 0.5, 0.0004, 0].map((value) => signed(value, 2))).toEqual(['−0.50', '+0.50', '0.00', '0.00']);
  expect([-0.5, 0.5, 10].map((value) => signed(value, 3, plain))).toEqual(['−0.5', '+0.5', '+10']);
  expect([plain(30), plain(100, 0), plain(0.1254, 3)]).toEqual(['30', '100', '0.125']);
});

test('a measure keeps its decimals; degrees stand close, other units apart, and what has none stays bare', () => {
  expect(measure(5, 'mm', 2)).toBe('5.00 mm');
  expect(measure(-0.004, 'mm', 2)).toBe('0.00 mm');
  expect(measure(2.9, '°', 2)).toBe('2.90°');
  expect(measure(26.32, 'g', 1)).toBe('26.3 g');
  expect(measure(4, '', 0)).toBe('4');
});

test('a range says its unit once, but for degrees', () => {
  expect(fromTo(0, 1.5, 'mm')).toBe('0 to 1.5 mm');
  expect(fromTo(-0.5, 1.5, 'mm')).toBe('−0.5 to 1.5 mm');
  expect(fromTo(2.5, 3.5, '°')).toBe('2.5° to 3.5°');
});

test('what is said alike is neither below nor above', () => {
  expect(below(1.996, 2)).toBe(false);
  expect(below(1.994, 2)).toBe(true);
  expect(below(2, 2)).toBe(false);
  expect(above(4.504, 4.5)).toBe(false);
  expect(above(4.506, 4.5)).toBe(true);
  expect(above(0.5006, 0.5, 3)).toBe(true);
});
