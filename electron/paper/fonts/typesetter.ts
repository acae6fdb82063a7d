import { Paragraph } from './direction.ts';
import { drawable } from './drawable.ts';
import { FAMILIES, type Face, type Family, familiesFor } from './families.ts';
import { fontForOneDocument } from './font-files.ts';
import { breakablePieces } from './line-break.ts';
import { type Run, runsOf } from './runs.ts';
import { DIRECTION_FEATURE, shapedFont } from './shaped-font.ts';
import { lettersOf } from './syllables.ts';

export interface TextStyle {
  face: Face;
  /** In points. */
  size: number;
  /** From baseline to baseline, in points. */
  leading: number;
  ink: string;
  /** Extra space between letters, in points; not in scripts whose letters join. */
  spacing?: number;
}

export interface TextLine {
  /** In the order in which it is written. */
  text: string;
  /** From left to right. */
  runs: Run[];
  /** In points, without trailing spaces. */
  width: number;
  rightToLeft: boolean;
  /** In points: what moves a line that runs from right to left to where its paragraph begins. */
  indent: number;
  style: TextStyle;
}

/**
 * Measures, breaks and draws text in any alphabet, for one document.
 */
export class Typesetter {
  readonly #document: PDFKit.PDFDocument;
  readonly #families: Family[];
  readonly #registered = new Set<string>();

  constructor(document: PDFKit.PDFDocument, locale: string) {
    this.#document = document;
    this.#families = familiesFor(locale);
  }

  /** Breaks text into lines no wider than `width` points. An empty text has no lines. */
  lines(text: string, style: TextStyle, width: number): TextLine[] {
    const ready = drawable(text);
    if (ready.trim() === '') return [];
    return ready
      .trimEnd()
      .split('\n')
      .flatMap((paragraph) => this.#paragraphLines(paragraph.trimEnd(), style, width));
  }

  /** Width in points of a text set on one line. */
  widthOf(text: string, style: TextStyle): number {
    const paragraph = new Paragraph(drawable(text).replaceAll('\n', ' '));
    return this.#width(paragraph, 0, paragraph.text.length, style);
  }

  /** Draws a line with its baseline at `baseline`; `x` is the edge or middle that `align` names. */
  draw(line: TextLine, x: number, baseline: number, align: 'left' | 'right' | 'center' = 'left') {
    let at =
      align === 'left' ? x + line.indent : align === 'right' ? x - line.width : x - line.width / 2;
    this.#document.fillColor(line.style.ink);
    const placed = line.runs.map((run) => {
      const place = { run, x: at };
      at += this.#runWidth(run, line.style);
      return place;
    });
    // In the order in which they are written: whoever copies the text out goes by that.
    for (const { run, x: left } of placed.sort((one, other) => one.run.at - other.run.at)) {
      this.#use(run, line.style);
      this.#document.text(run.text, left, baseline, {
        lineBreak: false,
        baseline: 'alphabetic',
        characterSpacing: run.shaped ? 0 : (line.style.spacing ?? 0),
        ...featuresOf(run),
      });
    }
  }

  #paragraphLines(text: string, style: TextStyle, width: number): TextLine[] {
    const paragraph = new Paragraph(text);
    const lines: TextLine[] = [];
    let start = 0;
    let end = 0;
    const finish = (at: number) => {
      lines.push(this.#line(paragraph, start, at, style));
      start = at;
    };
    for (const piece of breakablePieces(text)) {
      if (end > start && this.#width(paragraph, start, end + piece.length, style) > width)
        finish(end);
      end += piece.length;
      while (
        end - start > LONGEST ||
        (end - start > 1 && this.#width(paragraph, start, end, style) > width)
      ) {
        const length = this.#lengthThatFits(paragraph, start, end, style, width);
        if (length === end - start) break;
        finish(start + length);
      }
    }
    if (end > start || text === '') finish(end);
    return evened(lines);
  }

  #line(paragraph: Paragraph, start: number, end: number, style: TextStyle): TextLine {
    const text = paragraph.text.slice(start, end).trimEnd();
    const runs = this.#runs(paragraph, start, start + text.length, style);
    const width = this.#runsWidth(runs, style);
    return { text, runs, width, rightToLeft: paragraph.rightToLeft, indent: 0, style };
  }

  #runs(paragraph: Paragraph, start: number, end: number, style: TextStyle): Run[] {
    return paragraph.stretches(start, end).flatMap((stretch) => {
      // A no-break space has done its work once the line is broken; a plain one is found by searching.
      const text = stretch.text.replaceAll(/[\u00a0\u202f]/g, ' ');
      return runsOf({ ...stretch, text }, style.face, this.#families);
    });
  }

  /** Without trailing spaces. */
  #width(paragraph: Paragraph, start: number, end: number, style: TextStyle): number {
    const length = paragraph.text.slice(start, end).trimEnd().length;
    return this.#runsWidth(this.#runs(paragraph, start, start + length, style), style);
  }

  #runsWidth(runs: Run[], style: TextStyle): number {
    return runs.reduce((sum, run) => sum + this.#runWidth(run, style), 0);
  }

  #runWidth(run: Run, style: TextStyle): number {
    if (run.text === '') return 0;
    this.#use(run, style);
    if (run.shaped) return this.#document.widthOfString(run.text, featuresOf(run));
    const spacing = (style.spacing ?? 0) * Array.from(run.text).length;
    return this.#document.widthOfString(run.text) + spacing;
  }

  /**
   * Length of the longest beginning that fits, at least one letter: less than all for a word wider than its
   * column. It is looked for from short to long, since laying out what doesn't fit may cost much.
   */
  #lengthThatFits(
    paragraph: Paragraph,
    start: number,
    end: number,
    style: TextStyle,
    width: number,
  ): number {
    const ends = endsOf(lettersOf(paragraph.text.slice(start, end)));
    const fits = (count: number) =>
      this.#width(paragraph, start, start + (ends[count - 1] ?? 0), style) <= width;
    let most = 1;
    let tooMany = ends.length + 1;
    while (tooMany - most > 1) {
      const beyond = tooMany > ends.length;
      const count = beyond
        ? Math.min(ends.length, Math.max(FIRST_PROBE, most * 2))
        : Math.floor((most + tooMany) / 2);
      if (fits(count)) most = count;
      else tooMany = count;
    }
    return ends[most - 1] ?? 0;
  }

  #use({ family, shaped }: Run, { face, size }: TextStyle) {
    const name = `${family} ${face}${shaped ? ' shaped' : ''}`;
    if (!this.#registered.has(name)) {
      const font = fontForOneDocument(family, face);
      const whole = FAMILIES[family].setting !== 'syllables';
      this.#document.registerFont(name, shaped ? shapedFont(font, whole) : font);
      this.#registered.add(name);
    }
    this.#document.font(name).fontSize(size * (FAMILIES[family].scale ?? 1));
  }
}

/** In letters: about what a column holds, and more than any does. */
const FIRST_PROBE = 64;
const LONGEST = 400;

/** Where each letter ends. */
function endsOf(letters: string[]): number[] {
  let end = 0;
  return letters.map((letter) => {
    end += letter.length;
    return end;
  });
}

/** Lines of a paragraph, those from right to left all with their beginning where the widest has it. */
export function evened(lines: TextLine[]): TextLine[] {
  const widest = Math.max(0, ...lines.map(({ width }) => width));
  return lines.map((line) => (line.rightToLeft ? { ...line, indent: widest - line.width } : line));
}

/** pdfkit lays out a text with features whole, one without them word by word. */
function featuresOf({ shaped, rightToLeft }: Run): { features?: PDFKit.Mixins.OpenTypeFeatures[] } {
  if (!shaped) return {};
  return { features: [DIRECTION_FEATURE[rightToLeft ? 'rightToLeft' : 'leftToRight']] };
}
