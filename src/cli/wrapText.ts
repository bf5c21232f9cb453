import { textWidth } from './textWidth.ts';

/** Breaks a text at its blanks into lines of at most `width` columns; a longer word has a line of its own. */
export function wrapText(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
}
