import { expect, test } from 'vitest';
import { judgeMeasured } from '../../src/making/judgeMeasured.ts';
import { general } from '../../src/trade/tolerances.ts';
import { bench } from './onBench.ts';

const one = bench({ 'saddle.slotWidth': 3 });

test('a slot may be wider by 0.05 and no narrower', () => {
  const width = one.setting('check.slot-width');
  expect(judgeMeasured(width, 3)).toMatchObject({ off: 0, beyond: 0, within: true });
  expect(judgeMeasured(width, 3.05).within).toBe(true);
  const narrow = judgeMeasured(width, 2.97);
  expect(narrow.within).toBe(false);
  expect(narrow.beyond).toBeCloseTo(-0.03, 12);
  expect(narrow.text).toBe('0.03 mm less than wanted: outside by 0.03 mm');
  const wide = judgeMeasured(width, 3.2);
  expect(wide.beyond).toBeCloseTo(0.15, 12);
  expect(wide.text).toBe('0.20 mm more than wanted: outside by 0.15 mm');
});

test('a limit and what reads like it are within, the next figure is outside, for every setting', () => {
  for (const setting of one.steps.flatMap(({ settings }) => settings)) {
    const { tolerance, value, id, decimals } = setting;
    const read = Math.min(2, decimals);
    const figure = 10 ** -read;
    if (!tolerance) {
      expect(judgeMeasured(setting, value + 1), id).toMatchObject({ within: undefined, beyond: 0 });
      continue;
    }
    expect(judgeMeasured(setting, Number((value + tolerance.plus).toFixed(read))).within, id).toBe(true);
    expect(judgeMeasured(setting, Number((value - tolerance.minus).toFixed(read))).within, id).toBe(true);
    expect(judgeMeasured(setting, value + tolerance.plus + figure).within, id).toBe(false);
    expect(judgeMeasured(setting, value - tolerance.minus - figure).within, id).toBe(false);
  }
});

test('what is no number is refused by its id', () => {
  expect(() => judgeMeasured(one.setting('check.tip'), Number.NaN)).toThrow(/check\.tip/);
});

// ISO 2768-1, class m, as quoted
test.each([
  [6, 0.1],
  [6.01, 0.2],
  [30, 0.2],
  [120, 0.3],
  [153, 0.5],
  [400, 0.5],
])('general tolerance of %f mm: ±%f', (length, off) => {
  expect(general(length)).toEqual({ minus: off, plus: off, ground: 'ISO 2768-m' });
});
