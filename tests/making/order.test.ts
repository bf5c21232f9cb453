import { describe, expect, test } from 'vitest';
import { readOrder } from '../../src/making/order.ts';
import { thrown } from '../support/change.ts';

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
