/** What the header of a STEP file says of itself. */
export interface StepHeader {
  /** The design's name. */
  readonly name: string;
  readonly written: Date;
}

/**
 * Puts a STEP file's text in order: a header that names the design, the time and what wrote it, in place of the
 * kernel's own, and every character beyond ASCII written as ISO 10303-21 asks (`\\X2\\00FC\\X0\\`), where the kernel
 * writes bare UTF-8 that readers garble.
 */
export function stepText(text: string, { name, written }: StepHeader): string {
  const schema = /FILE_SCHEMA\s*\(.*?\)\s*;/s.exec(text)?.[0] ?? '';
  const stamp = written.toISOString().slice(0, 19);
  const header = [
    'HEADER;',
    "FILE_DESCRIPTION(('bridge of a steel-string guitar, one solid, millimetres'),'2;1');",
    `FILE_NAME('${quoted(name)}','${stamp}',(''),(''),'Open CASCADE 8.0','Pinbridge','');`,
    schema,
    'ENDSEC;',
  ].join('\n');
  return encoded(text.replace(/HEADER;.*?ENDSEC;/s, () => header));
}

/** A name inside a STEP string: apostrophes and backslashes doubled. */
export function quoted(name: string): string {
  return name.replaceAll('\\', '\\\\').replaceAll("'", "''");
}

function encoded(text: string): string {
  return text.replace(/\P{ASCII}+/gu, (run) => {
    const units = [...run].map((c) => c.codePointAt(0) ?? 0);
    return units.every((u) => u <= 0xffff)
      ? `\\X2\\${units.map((u) => u.toString(16).toUpperCase().padStart(4, '0')).join('')}\\X0\\`
      : `\\X4\\${units.map((u) => u.toString(16).toUpperCase().padStart(8, '0')).join('')}\\X0\\`;
  });
}
