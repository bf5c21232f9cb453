import { create, type Font } from 'fontkit';
import type { Typeface } from './sheet.ts';

/** Stands for each character that the fonts lack: an open box (U+25A1), as printers have set it. */
const LACKING = '□';

/** A line of text has no room for these: line ends, tabs and what only steers a terminal. */
const CONTROL = /\p{Cc}+/gu;

/** Marks that nobody sees: joiners, variation selectors, soft hyphens, byte order marks. */
const UNSEEN = /\p{Default_Ignorable_Code_Point}/gu;

/** What is left out of the setting of type: a PDF's text carries no kerning, so none is measured. */
export const FEATURES = { kern: false, liga: false, clig: false } as const;

/** Widths that are remembered before all are forgotten: those of a few designs' papers. */
const MOST_KNOWN = 4000;

/** A typeface that is really there: what measures it, and what puts it into files. */
export interface FontTypeface extends Typeface {
  /** The regular font's family, for formats that name a font. */
  readonly family: string;
  /** Names and files of the two fonts, for formats that carry them. */
  readonly regular: FontFile;
  readonly bold: FontFile;
  /** Text as it is drawn: one line, with an open box for each character that the font lacks. */
  shown(text: string, bold?: boolean): string;
  /** Letters of a text, as a reader counts them, that an open box stands for. */
  lacking(text: string): readonly string[];
  /** Size of the type (the em) at which a capital is `height` high, in the same unit. */
  size(height: number, bold?: boolean): number;
}

interface FontFile {
  readonly postscriptName: string;
  readonly bytes: Uint8Array;
}

/**
 * A typeface from the bytes of two TrueType fonts of one family. Throws when the bytes are no font.
 *
 * The height of a capital is that of its H, read from the outline: not every font says it in its tables.
 */
export function createTypeface(regular: Uint8Array, bold: Uint8Array): FontTypeface {
  const fonts = { regular: create(regular), bold: create(bold) };
  const font = (isBold = false) => (isBold ? fonts.bold : fonts.regular);
  const shown = (text: string, isBold?: boolean) => drawable(font(isBold), text);
  const capitals = { regular: capital(fonts.regular), bold: capital(fonts.bold) };
  const capitalOf = (isBold = false) => (isBold ? capitals.bold : capitals.regular);
  const size = (height: number, isBold?: boolean) => (height * font(isBold).unitsPerEm) / capitalOf(isBold);
  // laying out a sheet asks for the same few words again and again
  const known = new Map<string, number>();
  const units = (text: string, isBold = false): number => {
    const key = `${isBold ? 'b' : 'r'}${text}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const { glyphs } = font(isBold).layout(shown(text, isBold), FEATURES);
    const sum = glyphs.reduce((all, glyph) => all + glyph.advanceWidth, 0);
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(key, sum);
    return sum;
  };
  return {
    family: fonts.regular.familyName,
    regular: { postscriptName: fonts.regular.postscriptName, bytes: regular },
    bold: { postscriptName: fonts.bold.postscriptName, bytes: bold },
    shown,
    lacking: (text) =>
      letters(font(), text).flatMap(({ letter, seen }) => (seen === undefined ? [letter] : [])),
    size,
    width: (text, height, isBold) => (units(text, isBold) * height) / capitalOf(isBold),
  };
}

/** Height of a capital in units of the font. */
function capital(font: Font): number {
  return font.glyphForCodePoint('H'.codePointAt(0) as number).bbox.maxY;
}

function drawable(font: Font, text: string): string {
  return letters(font, text)
    .map(({ seen }) => seen ?? LACKING)
    .join('');
}

/** A text's letters, each with what is drawn of it; undefined where the font lacks it. */
function letters(
  font: Font,
  text: string,
): readonly { readonly letter: string; readonly seen: string | undefined }[] {
  const line = text.normalize('NFC').replace(CONTROL, ' ');
  // by characters as a reader counts them: an emoji of seven code points is one box
  return Array.from(new Intl.Segmenter('en').segment(line), ({ segment }) => {
    const seen = segment.replace(UNSEEN, '');
    const there = Array.from(seen).every((c) => font.hasGlyphForCodePoint(c.codePointAt(0) as number));
    return { letter: segment, seen: there ? seen : undefined };
  });
}
