import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { FileEntry } from './zip.ts';

/** What tells a file from every other. */
export interface ManifestEntry {
  readonly name: string;
  /** bytes */
  readonly size: number;
  /** SHA-256 (FIPS 180-4), hexadecimal */
  readonly sha256: string;
}

/**
 * Size and SHA-256 of each file. By a library, since browsers keep their own (Web Crypto) from pages that come from
 * another machine without encryption, as in a workshop's network.
 */
export function manifest(files: readonly FileEntry[]): readonly ManifestEntry[] {
  return files.map(({ name, bytes }) => ({ name, size: bytes.length, sha256: bytesToHex(sha256(bytes)) }));
}

/**
 * A manifest as text that a person can read and `sha256sum -c` can check: a remark with the size, then hash and name,
 * for each file.
 *
 * @param title one line at the head
 */
export function writeManifest(title: string, entries: readonly ManifestEntry[]): string {
  const files = entries.flatMap(({ name, size, sha256: hash }) => [`# ${size} bytes`, `${hash}  ${name}`]);
  const head = [
    `# ${title.replace(/\p{Cc}+/gu, ' ')}`,
    '# Size and SHA-256 of each file. To check: sha256sum -c',
  ];
  return `${[...head, ...files].join('\n')}\n`;
}
