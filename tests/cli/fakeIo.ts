import type { Io } from '../../src/cli/io.ts';

/** A terminal that remembers what was said on it. */
export function fakeIo({ stdin = '', watched = false } = {}): Io & { said: { out: string; err: string } } {
  const said = { out: '', err: '' };
  return {
    said,
    watched,
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    readStdin: async () => stdin,
  };
}
