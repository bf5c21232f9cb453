/** A design's name as a file's: letters and figures of any script, with hyphens between. */
export function safeName(name: string): string {
  const plain = name
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}\p{M}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 80);
  return plain === '' ? 'bridge' : plain;
}
