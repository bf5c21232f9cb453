import { webcrypto } from 'node:crypto';
import { expect, test } from 'vitest';
import { manifest, writeManifest } from '../../src/files/manifest.ts';

test('SHA-256 of the standard’s own example', () => {
  // FIPS 180-2, appendix B.1: "abc"
  expect(manifest([{ name: 'abc', bytes: new TextEncoder().encode('abc') }])).toEqual([
    { name: 'abc', size: 3, sha256: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad' },
  ]);
});

test.each([0, 1, 63, 64, 1000, 300_001])('agrees with Node’s own for %i bytes', async (size) => {
  const bytes = Uint8Array.from({ length: size }, (_, i) => (i * 7919) % 251);
  const [entry] = manifest([{ name: 'a', bytes }]);
  expect(entry?.size).toBe(size);
  expect(entry?.sha256).toBe(Buffer.from(await webcrypto.subtle.digest('SHA-256', bytes)).toString('hex'));
});

test('a title is one line', () => {
  expect(writeManifest('a\n\rb', [{ name: 'c.txt', size: 12, sha256: '00' }])).toBe(
    '# a b\n# Size and SHA-256 of each file. To check: sha256sum -c\n# 12 bytes\n00  c.txt\n',
  );
});
