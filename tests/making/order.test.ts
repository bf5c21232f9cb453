import { describe, expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { allowanceText } from '../../src/making/allowanceText.ts';
import { readOrder } from '../../src/making/order.ts';
import { orderFor } from '../../src/making/orderFor.ts';
import { type Changes, designText, thrown } from '../support/change.ts';

test('nothing given is one piece as drilled', () => {
  expect(readOrder({})).toEqual({
    quantity: 1,
    deadline: '',
    remarks: '',
    holes: 'drilled',
    sandingAllowance: 0,
  });
});

test('what is asked for is kept, line ends of every kind made one', () => {
  const order = {
    quantity: 999,
    deadline: '2032-02-29',
    remarks: 'a\r\nb\rc 🎸',
    holes: 'reamed',
    sandingAllowance: 0.5,
  };
  expect(readOrder(order)).toEqual({ ...order, remarks: 'a\nb\nc 🎸' });
  expect(readOrder({ remarks: '🎸'.repeat(2000) }).remarks).toHaveLength(4000);
  expect(readOrder({ remarks: '\n'.repeat(39) }).remarks).toHaveLength(39);
});

test('an allowance is kept to a hundredth, and said alike everywhere', () => {
  for (const [given, kept, said] of [
    [0, 0, '0'],
    [0.006, 0.01, '0.01'],
    [0.1234, 0.12, '0.12'],
    [25.4 / 64, 0.4, '0.4'],
    [0.5, 0.5, '0.5'],
  ] as const) {
    const { sandingAllowance } = readOrder({ sandingAllowance: given });
    expect(sandingAllowance).toBe(kept);
    expect(allowanceText(sandingAllowance)).toBe(said);
  }
});

test('a deadline is no earlier than the day of the order', () => {
  expect(readOrder({ deadline: '2031-05-17' }, '2031-05-17').deadline).toBe('2031-05-17');
  expect(readOrder({}, '2031-05-17').deadline).toBe('');
  const [late] = thrown(() => readOrder({ deadline: '2031-05-16' }, '2031-05-17'));
  expect(late).toMatchObject({ path: 'order.deadline', allowed: 'a day from 2031-05-17 on, or nothing' });
});

test('reaming that takes nothing off leaves an order as drilled', () => {
  const design = (changes: Changes) => acceptDesign(designText(changes)).design;
  const reamed = readOrder({ holes: 'reamed', quantity: 3 });
  expect(orderFor(design({}), reamed)).toEqual(reamed);
  for (const changes of [{ 'pins.taper': 0 }, { 'pins.mouth': '3/16 in' }])
    expect(orderFor(design(changes), reamed)).toEqual({ ...reamed, holes: 'drilled' });
});

describe('refused with its path', () => {
  test.each<[unknown, string]>([
    [{ quantity: 0 }, 'order.quantity'],
    [{ quantity: 1000 }, 'order.quantity'],
    [{ quantity: 1.5 }, 'order.quantity'],
    [{ quantity: '3' }, 'order.quantity'],
    [{ quantity: Number.NaN }, 'order.quantity'],
    [{ deadline: '2031-02-30' }, 'order.deadline'],
    [{ deadline: '2031-13-01' }, 'order.deadline'],
    [{ deadline: 'soon' }, 'order.deadline'],
    [{ deadline: 20310517 }, 'order.deadline'],
    [{ remarks: 'x'.repeat(2001) }, 'order.remarks'],
    [{ remarks: 'bell \u0007' }, 'order.remarks'],
    [{ remarks: 7 }, 'order.remarks'],
    [{ holes: 'punched' }, 'order.holes'],
    [{ remarks: '\n'.repeat(40) }, 'order.remarks'],
    [{ sandingAllowance: 0.0004 }, 'order.sandingAllowance'],
    [{ sandingAllowance: 0.506 }, 'order.sandingAllowance'],
    [{ sandingAllowance: 0.6 }, 'order.sandingAllowance'],
    [{ sandingAllowance: -0.1 }, 'order.sandingAllowance'],
    [{ colour: 'red' }, 'order.colour'],
    ['one', 'order'],
  ])('%o', (given, path) => {
    const problems = thrown(() => readOrder(given));
    expect(problems).toMatchObject([{ path }]);
    expect(problems[0]?.allowed).toMatch(/\S/);
    expect(problems[0]?.remedy).toMatch(/\S/);
  });
});
