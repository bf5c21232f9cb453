import { expect, test } from 'vitest';
import { ClientError } from '../../../src/app/client/clientError.ts';
import { notWritten } from '../../../src/app/files/notWritten.ts';
import type { Failure } from '../../../workers/protocol.ts';

const problem = {
  code: 'out-of-range',
  path: 'top.tip',
  value: '99',
  allowed: '1 to 10 mm',
  remedy: 'Keep it within 1 to 10 mm.',
} as const;

test.each<[Failure, string, string]>([
  [
    { kind: 'kernel', message: 'check of the finished solid: 2 pieces instead of one' },
    'The exact solid came out unsound (check of the finished solid: 2 pieces instead of one).',
    'The exact solid came out unsound (check of the finished solid: 2 pieces instead of one). Nothing was written. Change a number slightly and try again.',
  ],
  [
    { kind: 'stopped', message: 'The exact solid broke off (out of memory).' },
    'The exact solid broke off (out of memory).',
    'The exact solid broke off (out of memory). Nothing was written. Try again.',
  ],
  [
    { kind: 'design', problems: [problem] },
    'Top, wing tip: 99. Keep it within 1 to 10 mm.',
    'Nothing was written. Top, wing tip: 99. Keep it within 1 to 10 mm.',
  ],
])('%j is said in the bench’s words, with what to do', (failure, said, written) => {
  const error = new ClientError(failure);
  expect(error.message).toBe(said);
  expect(notWritten(error)).toBe(written);
});
