/**
 * What is used of fontkit, here and by the PDF library that gets it handed on. The types that npm has for it bring
 * Node's with them, which have no place in this room. Lengths are in units of the font: `unitsPerEm` of them are the
 * size of the type.
 */
declare module 'fontkit' {
  export interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
    readonly codePoints: number[];
    readonly bbox: Box;
  }

  export interface Font {
    readonly familyName: string;
    readonly postscriptName: string;
    readonly unitsPerEm: number;
    readonly ascent: number;
    readonly descent: number;
    readonly italicAngle: number;
    readonly capHeight: number;
    readonly xHeight: number;
    readonly bbox: Box;
    readonly characterSet: number[];
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
    layout(text: string, features?: Record<string, boolean> | string[]): { glyphs: Glyph[] };
    createSubset(): { includeGlyph(glyph: number | { readonly id: number }): number; encode(): Uint8Array };
  }

  interface Box {
    readonly minX: number;
    readonly minY: number;
    readonly maxX: number;
    readonly maxY: number;
    readonly width: number;
    readonly height: number;
  }

  /** Reads a font file; throws when it is none. */
  export function create(bytes: Uint8Array): Font;
}
