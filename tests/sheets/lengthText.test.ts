import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readQuantity } from '../../src/design/quantity.ts';
import { angleText, lengthText, limitsText } from '../../src/sheets/lengthText.ts';

test.each([
  [57, '57'],
  [4.7625, '4.76'],
  [11.4, '11.4'],
  [-13.5, '−13.5'],
  [-0.001, '0'],
  [100, '100'],
  [7620, '7620'],
])('%f mm is %s', (mm, text) => {
  expect(lengthText(mm, 'mm')).toBe(text);
});

test.each([
  [4.7625, '3/16'],
  [406.4, '16'],
  [38.1, '1 1/2'],
  [-12.7, '−1/2'],
  [153, '6.024'],
  [0, '0'],
  [0.01, '0'],
  [25.4 / 64, '1/64'],
])('%f mm is %s in', (mm, text) => {
  expect(lengthText(mm, 'in')).toBe(text);
});

test('what stands on paper, read again, is the length to half its last place', () => {
  fc.assert(
    fc.property(fc.double({ min: -9000, max: 9000, noNaN: true }), (mm) => {
      const back = (text: string) => {
        const read = readQuantity(text, 'length');
        return read.ok ? read.value : Number.NaN;
      };
      expect(Math.abs(back(lengthText(mm, 'mm')) - mm)).toBeLessThan(0.00501);
      expect(Math.abs(back(`${lengthText(mm, 'in')} in`) - mm)).toBeLessThan(0.00051 * 25.4);
    }),
    { seed: 3 },
  );
});

test('angles and limits', () => {
  expect(angleText(2.833)).toBe('2.83°');
  expect(angleText(90)).toBe('90°');
  const limits = (plus: number, minus: number) => ({ plus, minus, ground: '' });
  expect(limitsText(limits(0.05, 0), 'mm')).toBe('+0.05/0');
  expect(limitsText(limits(0.05, 0), 'in')).toBe('+0.002/0');
  expect(limitsText(limits(0.2, 0.1), 'mm')).toBe('+0.2/−0.1');
  expect(limitsText(limits(0.1, 0.1), 'mm')).toBe('±0.1');
});
