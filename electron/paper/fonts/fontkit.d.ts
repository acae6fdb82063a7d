/** The little that is used of fontkit, which ships without types. Lengths are in font units. */
declare module 'fontkit' {
  export interface Glyph {
    id: number;
    codePoints: number[];
    advanceWidth: number;
    bbox: { minX: number; minY: number; maxX: number; maxY: number };
  }
  export interface GlyphPosition {
    xAdvance: number;
    yAdvance: number;
    xOffset: number;
    yOffset: number;
  }
  export interface GlyphRun {
    glyphs: Glyph[];
    positions: GlyphPosition[];
    advanceWidth: number;
  }
  /** What of a TrueType font goes into a document. */
  export interface Subset {
    font: Font;
    /** Per glyph of the document, in their order: numbers in the font, outlines, metrics. */
    glyphs: number[];
    glyf: Uint8Array[];
    loca: { offsets: number[] };
    hmtx: { metrics: { advance: number; bearing: number }[] };
    offset: number;
    includeGlyph(id: number): number;
    _addGlyph(id: number): number;
  }
  export interface LookupProcessor {
    glyphs: unknown[];
    glyphIterator: { index: number };
    applyLookup(type: number, table: unknown): boolean;
  }
  export interface Positioning extends LookupProcessor {
    getAnchor(anchor: unknown): { x: number; y: number };
  }
  export interface Font {
    postscriptName: string;
    hasGlyphForCodePoint(codePoint: number): boolean;
    getGlyph(id: number, codePoints?: number[]): Glyph;
    layout(
      text: string,
      features?: string[],
      script?: string | null,
      language?: string | null,
      direction?: 'ltr' | 'rtl',
    ): GlyphRun;
    createSubset(): Subset;
    /** Glyphs by number, each with the text that first asked for it. */
    _glyphs: Record<number, unknown>;
    _layoutEngine: {
      engine: { GSUBProcessor: LookupProcessor | null; GPOSProcessor: Positioning | null } | null;
    };
    maxp: Record<string, number>;
  }
  export function create(file: Uint8Array): Font;
}

/** pdfkit takes an open font as well as a file; its types know of the file only. */
declare namespace PDFKit.Mixins {
  interface PDFFont {
    registerFont(name: string, src: import('fontkit').Font): this;
  }
}
