import { expect, test } from 'vitest';
import { readOrderText } from '../../../src/app/files/readOrderText.ts';

const usual = { quantity: '1', deadline: '', remarks: '', sandingAllowance: '0' };

test('an order as typed', () => {
  expect(readOrderText(usual, 'drilled', '2031-05-17')).toEqual({
    ok: true,
    order: { quantity: 1, deadline: '', remarks: '', sandingAllowance: 0, holes: 'drilled' },
  });
  const inches = readOrderText(
    { ...usual, quantity: ' 12 ', sandingAllowance: '1/64 in' },
    'reamed',
    '2031-05-17',
  );
  expect(inches.ok && inches.order.sandingAllowance).toBe(0.4);
  expect(inches.ok && inches.order.quantity).toBe(12);
});

test.each([
  [{ quantity: '0' }, 'order.quantity'],
  [{ quantity: '1.5' }, 'order.quantity'],
  [{ quantity: '' }, 'order.quantity'],
  [{ quantity: '1000' }, 'order.quantity'],
  [{ sandingAllowance: '0.6' }, 'order.sandingAllowance'],
  [{ sandingAllowance: '-0.1' }, 'order.sandingAllowance'],
  [{ sandingAllowance: 'some' }, 'order.sandingAllowance'],
  [{ deadline: '2031-05-16' }, 'order.deadline'],
  [{ deadline: '2032-02-30' }, 'order.deadline'],
  [{ remarks: 'x'.repeat(2001) }, 'order.remarks'],
])('%o is refused at its field', (part, path) => {
  const read = readOrderText({ ...usual, ...part }, 'drilled', '2031-05-17');
  expect(read.ok ? [] : read.problems.map((one) => one.path)).toEqual([path]);
});
