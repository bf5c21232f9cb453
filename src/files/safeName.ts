/** Every system takes names this long with an ending added: most allow 255 bytes, and CJK takes 3 bytes a character. */
const MOST = { characters: 80, bytes: 180 } as const;

/** What Windows keeps for devices, whatever the ending. */
const RESERVED = /^(con|prn|aux|nul|conin|conout|(com|lpt)[0-9¹²³])$/i;

/**
 * A design's name as a file's, without its ending: letters and figures of any script, with hyphens between.
 * What is safe already is left as it is.
 *
 * @param suffix kept whole at the end, the name being cut to make room: tells apart what would be named alike
 */
export function safeName(name: string, suffix = ''): string {
  const plain = trim(name.normalize('NFC').replace(/[^\p{L}\p{N}\p{M}]+/gu, '-'));
  const free = RESERVED.test(plain) ? `${plain}-bridge` : plain;
  return `${shorten(free, suffix) || 'bridge'}${suffix}`;
}

function shorten(name: string, suffix: string): string {
  // by code points: half a surrogate pair is no character
  const kept = Array.from(name).slice(0, MOST.characters - suffix.length);
  const bytes = () => new TextEncoder().encode(kept.join('')).length;
  while (bytes() > MOST.bytes - suffix.length) kept.pop();
  return trim(kept.join(''));
}

function trim(name: string): string {
  return name.replace(/^-+|-+$/g, '');
}
