import type { DesignText } from '../design/design.ts';

/**
 * Eight hexadecimal figures that tell a design's papers from another's: FNV-1a, 32 bits, over the UTF-8 bytes of its
 * canonical JSON (names sorted, no white space). The same design gives the same figures whatever order its fields stand
 * in. It guards against mixing up papers, not against forging them.
 */
export function fingerprint(text: DesignText): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(canonical(text))) hash = Math.imul(hash ^ byte, 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
}

function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${entries.map(([key, one]) => `${JSON.stringify(key)}:${canonical(one)}`).join(',')}}`;
}
