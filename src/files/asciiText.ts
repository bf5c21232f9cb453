/** Text in the characters of ASCII, for formats that know no others: accents left out, `_` for what has no likeness. */
export function asciiText(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[‘’]/g, "'")
    .replace(/[“”]/g, '"')
    .replace(/[‐-―−]/g, '-')
    .replace(/\p{Cc}+/gu, ' ')
    .replace(/[^ -~]/gu, '_');
}
