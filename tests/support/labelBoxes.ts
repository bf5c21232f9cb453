import type { OrientedBox } from '../../src/sheets/paper/box.ts';
import type { TextInk } from '../../src/sheets/paper/inks.ts';
import type { Sheet, Typeface } from '../../src/sheets/sheet.ts';
import { textBox } from '../../src/sheets/textBox.ts';

/** The place that each text of a sheet takes, with the text. */
export function labelBoxes(
  sheet: Pick<Sheet, 'inks'>,
  typeface: Typeface,
): readonly { readonly text: TextInk; readonly box: OrientedBox }[] {
  return sheet.inks.flatMap((ink) =>
    ink.kind === 'text' ? [{ text: ink, box: textBox(ink, typeface) }] : [],
  );
}
