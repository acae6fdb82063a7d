import PDFDocument from 'pdfkit';
import type { PaperHead } from '../content.ts';
import { type TextLine, type TextStyle, Typesetter } from '../fonts/typesetter.ts';
import { Structure } from './structure.ts';
import { type Writing, writingOf } from './writing.ts';

/** Points kept for the head of a continued page when it is asked whether something fits on one. */
const CONTINUATION_HEIGHT = 36;

/** Width and height in points. */
export type PageSize = [width: number, height: number];

interface Margins {
  top: number;
  bottom: number;
  left: number;
  right: number;
}

interface SheetOptions {
  head: PaperHead;
  title: string;
  size: PageSize;
  margins: Margins;
}

/** A piece of a paper that is measured before it is drawn. */
export interface Block {
  /** Points that must be free below the cursor for the beginning of the block to stand there. */
  lead: number;
  /** Points it takes when nothing divides it. */
  height: number;
  /** Set for what says nothing without the block below it. */
  keepsNext?: boolean;
  /** Set for what can be divided, but whose end stands on one page with the block below it. */
  endKeepsNext?: boolean;
  /** @param after points that what stays with its end takes below it */
  draw(after?: number): void;
}

/**
 * The paper being drawn: a PDF document with a cursor that runs down the page and over to the next.
 * Lengths are points, measured from the top left corner.
 */
export class Sheet {
  readonly document: PDFKit.PDFDocument;
  readonly structure: Structure;
  readonly type: Typesetter;
  readonly writing: Writing;
  readonly head: PaperHead;
  readonly title: string;
  readonly left: number;
  readonly width: number;
  readonly bottom: number;
  readonly #top: number;
  #drawContinuation: (() => void) | null = null;
  #freshAt = 0;
  y: number;

  constructor({ head, title, size, margins }: SheetOptions) {
    this.head = head;
    this.title = title;
    // The words on the papers are English; the locale decides how dates and amounts are written.
    const lang = /^en\b/i.test(head.shop.locale) ? head.shop.locale : 'en';
    this.document = new PDFDocument({
      size,
      margin: 0,
      bufferPages: true,
      pdfVersion: '1.7',
      tagged: true,
      displayTitle: true,
      lang,
      font: '',
      info: {
        Title: title,
        Author: head.shop.name,
        Subject: head.job === undefined ? title : `${title}, job ${head.job.code}`,
        Creator: 'Tappet',
        Producer: 'Tappet',
        CreationDate: new Date(head.issuedAt),
        ModDate: new Date(head.issuedAt),
      },
    });
    this.structure = new Structure(this.document);
    this.type = new Typesetter(this.document, head.shop.locale);
    this.writing = writingOf(head.shop);
    this.left = margins.left;
    this.width = size[0] - margins.left - margins.right;
    this.bottom = size[1] - margins.bottom;
    this.#top = margins.top;
    this.y = margins.top;
  }

  /** What stands at the top of every page but the first; it may move the cursor. */
  onContinuation(draw: () => void) {
    this.#drawContinuation = draw;
  }

  /** Points left above the foot of the page. */
  get room(): number {
    return this.bottom - this.y;
  }

  /** Points that an empty page offers. */
  get pageRoom(): number {
    return this.bottom - this.#top - CONTINUATION_HEIGHT;
  }

  /** Whether nothing but the page's own head stands on this page. */
  get fresh(): boolean {
    return this.y <= this.#freshAt;
  }

  /** Goes on to a new page unless so many points are free, or the page is empty already. */
  ensure(points: number) {
    if (points > this.room && !this.fresh) this.nextPage();
  }

  nextPage() {
    this.document.addPage();
    this.y = this.#top;
    this.#drawContinuation?.();
    this.#freshAt = this.y;
  }

  lines(text: string, style: TextStyle, width = this.width): TextLine[] {
    return this.type.lines(text, style, width);
  }

  /** Draws blocks one below the other, `gap` points apart; `after` is what stays with the end of the last. */
  flow(blocks: Block[], gap: number, after = 0) {
    for (const [index, block] of blocks.entries()) {
      if (index > 0 && !this.fresh) this.y += gap;
      this.ensure(leadOf(blocks.slice(index), gap));
      const rest = blocks.slice(index + 1);
      if (rest.length === 0) block.draw(after);
      else block.draw(block.endKeepsNext ? gap + leadOf(rest, gap) : 0);
    }
  }

  /** A horizontal rule at the cursor. */
  rule(weight: number, ink: string, x = this.left, width = this.width, y = this.y) {
    this.structure.artifact(() => {
      this.document
        .lineWidth(weight)
        .moveTo(x, y)
        .lineTo(x + width, y)
        .stroke(ink);
    });
  }

  /** Puts a file of text into the PDF, beside its pages. */
  attach(name: string, type: string, text: string, description: string) {
    const at = new Date(this.head.issuedAt);
    this.document.file(Buffer.from(text, 'utf8'), {
      name,
      type,
      description,
      creationDate: at,
      modifiedDate: at,
    });
  }

  /** Ends the document and gives its bytes: pdfkit writes at once, nothing is waited for. */
  finish(): Uint8Array {
    this.document.end();
    const bytes: unknown = this.document.read();
    if (!(bytes instanceof Uint8Array)) throw new Error('The drawing of a paper was not finished.');
    return new Uint8Array(bytes);
  }
}

/** Points that must be free for blocks to begin: the lead of the first, and of those it keeps. */
export function leadOf(blocks: Block[], gap: number): number {
  const [first, ...rest] = blocks;
  if (first === undefined) return 0;
  return first.keepsNext && rest.length > 0 ? first.height + gap + leadOf(rest, gap) : first.lead;
}

/** Height in points of blocks set below each other, `gap` points apart. */
export function heightOfFlow(blocks: Block[], gap: number): number {
  return (
    blocks.reduce((sum, block) => sum + block.height, 0) + gap * Math.max(0, blocks.length - 1)
  );
}

/** Height in points of lines set below each other. */
export function heightOf(lines: TextLine[]): number {
  return lines.reduce((sum, line) => sum + line.style.leading, 0);
}

/** Where the baseline of a line lies below its top: the letters stand in the middle of the leading. */
export function baselineOf(style: TextStyle): number {
  return style.leading / 2 + style.size * 0.36;
}

/** Draws lines below each other from `y` down and gives the y below the last. */
export function drawLines(
  sheet: Sheet,
  lines: TextLine[],
  x: number,
  y: number,
  align: 'left' | 'right' | 'center' = 'left',
): number {
  let top = y;
  for (const line of lines) {
    sheet.type.draw(line, x, top + baselineOf(line.style), align);
    top += line.style.leading;
  }
  return top;
}
