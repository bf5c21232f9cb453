import { expect, test } from 'vitest';
import { fingerprint } from '../../src/sheets/fingerprint.ts';
import { starter, starters } from '../support/starters.ts';

const { text } = starter('Plover');

/** FNV-1a by its definition, in whole numbers: hash = (hash XOR byte) · 16777619 mod 2³² (RFC 9923, from memory). */
function byDefinition(canonical: string): string {
  let hash = 2166136261n;
  for (const byte of Buffer.from(canonical, 'utf8')) hash = ((hash ^ BigInt(byte)) * 16777619n) % 2n ** 32n;
  return hash.toString(16).padStart(8, '0');
}

/** JSON with names in order, by JSON's own replacer. */
function inOrder(value: unknown): string {
  return JSON.stringify(value, (_, one: unknown) =>
    one && typeof one === 'object' && !Array.isArray(one)
      ? Object.fromEntries(Object.entries(one).sort(([a], [b]) => (a < b ? -1 : 1)))
      : one,
  );
}

test('the definition used here gives the published check value of "foobar"', () => {
  // 0xbf9cf968: test vectors of the FNV reference code, from memory
  expect(byDefinition('foobar')).toBe('bf9cf968');
});

test('eight hexadecimal figures, those of the definition over canonical JSON', () => {
  for (const [name, design] of starters) {
    const found = fingerprint(design.text);
    expect(found, name).toMatch(/^[0-9a-f]{8}$/);
    expect(found, name).toBe(byDefinition(inOrder(design.text)));
  }
});

test('the order of fields makes no difference, any value does', () => {
  const turned = Object.fromEntries(
    Object.entries(text)
      .reverse()
      .map(([group, fields]) => [
        group,
        typeof fields === 'object' ? Object.fromEntries(Object.entries(fields).reverse()) : fields,
      ]),
  ) as unknown as typeof text;
  expect(fingerprint(turned)).toBe(fingerprint(text));
  const changed = { ...text, top: { ...text.top, tip: 3.1 } };
  expect(fingerprint(changed)).not.toBe(fingerprint(text));
});

test('no two starters share one', () => {
  const all = [...starters.values()].map((design) => fingerprint(design.text));
  expect(new Set(all).size).toBe(all.length);
});
