import type { ReadingLine } from '../content.ts';
import { INK, SOFT_INK } from './ink.ts';
import type { Sheet } from './sheet.ts';

/** A shape beside words, told apart by its form alone. */
export type Sign = ReadingLine['verdict'];

/** Points that a sign takes to the left of its words. */
export const SIGN_SPACE = 12;

/** The words of a verdict. The sign never stands without them. */
export const VERDICT_WORDS = {
  within: 'within limits',
  outside: 'outside limits',
  'too-close': 'too close to call',
  'no-band': 'no limits',
} satisfies Record<Sign, string>;

const RADIUS = 3.6;

/** Draws a sign at `x`, level with the letters that stand on `baseline`. */
export function drawSign(sheet: Sheet, sign: Sign, x: number, baseline: number) {
  const middle = { x: x + RADIUS + 0.4, y: baseline - 2.9 };
  sheet.structure.artifact(() => {
    sheet.document.save().lineCap('round').lineJoin('round');
    SHAPES[sign](sheet.document, middle.x, middle.y);
    sheet.document.restore();
  });
}

const SHAPES = {
  /** A tick in an open ring. */
  within: (document, x, y) => {
    document.lineWidth(0.7).circle(x, y, RADIUS).stroke(INK);
    document
      .lineWidth(1)
      .moveTo(x - 1.7, y + 0.1)
      .lineTo(x - 0.4, y + 1.5)
      .lineTo(x + 1.9, y - 1.5)
      .stroke(INK);
  },
  /** A white cross in a black square. */
  outside: (document, x, y) => {
    document.rect(x - RADIUS, y - RADIUS, RADIUS * 2, RADIUS * 2).fill(INK);
    document
      .lineWidth(1.1)
      .moveTo(x - 1.8, y - 1.8)
      .lineTo(x + 1.8, y + 1.8)
      .moveTo(x + 1.8, y - 1.8)
      .lineTo(x - 1.8, y + 1.8)
      .stroke('#ffffff');
  },
  /** A diamond, half of it black: it could be either. */
  'too-close': (document, x, y) => {
    const reach = RADIUS + 0.6;
    document.polygon([x - reach, y], [x, y - reach], [x, y + reach]).fill(INK);
    document
      .lineWidth(0.7)
      .polygon([x - reach, y], [x, y - reach], [x + reach, y], [x, y + reach])
      .stroke(INK);
  },
  /** A dash. */
  'no-band': (document, x, y) => {
    document
      .lineWidth(1)
      .moveTo(x - 2.6, y)
      .lineTo(x + 2.6, y)
      .stroke(SOFT_INK);
  },
} satisfies Record<Sign, (document: PDFKit.PDFDocument, x: number, y: number) => void>;
