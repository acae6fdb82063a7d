/** The little that is used of fontkit, which ships without types: does a font have a glyph? */
declare module 'fontkit' {
  export interface Font {
    hasGlyphForCodePoint(codePoint: number): boolean;
  }
  export function create(file: Uint8Array): Font;
}
