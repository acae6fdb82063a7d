import { type Face, type Family, fontForOneDocument } from './font-files.ts';
import { breakablePieces } from './line-break.ts';
import { drawable, type Run, runsOf } from './runs.ts';

export interface TextStyle {
  face: Face;
  /** In points. */
  size: number;
  /** From baseline to baseline, in points. */
  leading: number;
  ink: string;
  /** Extra space between letters, in points. */
  spacing?: number;
}

export interface TextLine {
  runs: Run[];
  /** In points, without trailing spaces. */
  width: number;
  style: TextStyle;
}

/**
 * Measures, breaks and draws text in any alphabet, for one document.
 */
export class Typesetter {
  readonly #document: PDFKit.PDFDocument;
  readonly #locale: string;
  readonly #registered = new Set<string>();

  constructor(document: PDFKit.PDFDocument, locale: string) {
    this.#document = document;
    this.#locale = locale;
  }

  /** Breaks text into lines no wider than `width` points. An empty text has no lines. */
  lines(text: string, style: TextStyle, width: number): TextLine[] {
    const lines: TextLine[] = [];
    const ready = drawable(text);
    if (ready.trim() === '') return lines;
    for (const paragraph of ready.trimEnd().split('\n')) {
      let line = '';
      for (const piece of breakablePieces(paragraph.trimEnd())) {
        if (line !== '' && this.#width((line + piece).trimEnd(), style) > width) {
          lines.push(this.#line(line, style));
          line = '';
        }
        line += piece;
        while (this.#width(line.trimEnd(), style) > width && line.length > 1) {
          const head = this.#headThatFits(line, style, width);
          lines.push(this.#line(head, style));
          line = line.slice(head.length);
        }
      }
      if (line !== '' || paragraph === '') lines.push(this.#line(line, style));
    }
    return lines;
  }

  /** Width in points of a text set on one line. */
  widthOf(text: string, style: TextStyle): number {
    return this.#width(drawable(text).replaceAll('\n', ' '), style);
  }

  /** Draws a line with its baseline at `baseline`; `x` is the edge or middle that `align` names. */
  draw(line: TextLine, x: number, baseline: number, align: 'left' | 'right' | 'center' = 'left') {
    let at = align === 'left' ? x : align === 'right' ? x - line.width : x - line.width / 2;
    this.#document.fillColor(line.style.ink);
    for (const run of line.runs) {
      const width = this.#runWidth(run, line.style);
      this.#document.text(run.text, at, baseline, {
        lineBreak: false,
        baseline: 'alphabetic',
        characterSpacing: line.style.spacing ?? 0,
      });
      at += width;
    }
  }

  #line(text: string, style: TextStyle): TextLine {
    const trimmed = text.trimEnd();
    // A no-break space has done its work once the line is broken; a plain one is found by searching.
    const runs = runsOf(trimmed.replaceAll(/[\u00a0\u202f]/g, ' '), style.face, this.#locale);
    return { runs: trimmed === '' ? [] : runs, width: this.#width(trimmed, style), style };
  }

  #width(text: string, style: TextStyle): number {
    const runs = runsOf(text.replaceAll(/[\u00a0\u202f]/g, ' '), style.face, this.#locale);
    return runs.reduce((sum, run) => sum + this.#runWidth(run, style), 0);
  }

  #runWidth(run: Run, style: TextStyle): number {
    if (run.text === '') return 0;
    this.#use(run.family, style);
    return (
      this.#document.widthOfString(run.text) + (style.spacing ?? 0) * Array.from(run.text).length
    );
  }

  /** The longest beginning that fits, at least one character, for a word wider than its column. */
  #headThatFits(text: string, style: TextStyle, width: number): string {
    let head = '';
    for (const character of text) {
      if (head !== '' && this.#width(head + character, style) > width) break;
      head += character;
    }
    return head;
  }

  #use(family: Family, style: TextStyle) {
    const name = `${family} ${style.face}`;
    if (!this.#registered.has(name)) {
      this.#document.registerFont(name, fontForOneDocument(family, style.face));
      this.#registered.add(name);
    }
    this.#document.font(name).fontSize(style.size);
  }
}
