import { expect, test } from 'vitest';
import { writeCsv } from '../../src/files/csv.ts';

test('quotes what has to be quoted, after RFC 4180', () => {
  // the RFC's own examples, 2.5 to 2.7
  expect(
    writeCsv([
      ['aaa', 'b\r\nbb', 'ccc'],
      ['zzz', 'yyy', 'b"bb'],
    ]),
  ).toBe('\ufeffaaa,"b\r\nbb",ccc\r\nzzz,yyy,"b""bb"\r\n');
  expect(writeCsv([])).toBe('\ufeff');
});
