/** What is used of fontkit. The types that npm has for it bring Node's with them, which have no place in this room. */
declare module 'fontkit' {
  export interface Glyph {
    readonly id: number;
    /** In units of the font, as everything here: `unitsPerEm` of them are the size of the type. */
    readonly advanceWidth: number;
    readonly codePoints: number[];
    readonly bbox: { readonly minY: number; readonly maxY: number };
  }

  export interface Font {
    readonly unitsPerEm: number;
    readonly familyName: string;
    readonly postscriptName: string;
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
    layout(text: string, features: Record<string, boolean>): { readonly glyphs: Glyph[] };
  }

  /** Reads a font file. */
  export function create(bytes: Uint8Array): Font;
}
