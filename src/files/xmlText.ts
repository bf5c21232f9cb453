const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};

/**
 * Text for XML 1.0, between marks or as an attribute's value: marks of XML as entities, line ends and controls as
 * blanks, and U+FFFD for what XML takes in no form (half a surrogate pair, U+FFFE and U+FFFF).
 */
export function xmlText(text: string): string {
  return text
    .replace(/\p{Cc}+/gu, ' ')
    .replace(/[\p{Cs}\ufffe\uffff]/gu, '\ufffd')
    .replace(/[&<>"']/g, (mark) => ENTITIES[mark] as string);
}
