/** The little that is used of fontkit, which ships without types. */
declare module 'fontkit' {
  export interface Font {
    hasGlyphForCodePoint(codePoint: number): boolean;
    /** Glyphs by number, each with the text that first asked for it. */
    _glyphs: Record<number, unknown>;
  }
  export function create(file: Uint8Array): Font;
}

/** pdfkit takes an open font as well as a file; its types know of the file only. */
declare namespace PDFKit.Mixins {
  interface PDFFont {
    registerFont(name: string, src: import('fontkit').Font): this;
  }
}
