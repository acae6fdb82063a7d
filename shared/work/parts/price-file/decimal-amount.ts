import { divideRounded, type Rounding } from '../../../money/round.ts';
import type { DecimalMark } from './words.ts';

/** What a cell of a price file is as an amount, or why it is none. */
export type CellAmount =
  | { ok: true; amount: number }
  | { ok: false; why: 'empty' | 'unreadable' | 'below-zero' | 'too-much' };

/** How the amounts of a file are written, and to what they are rounded. */
export interface AmountForm {
  mark: DecimalMark;
  /** Decimals that are kept: those of the currency, or three for a quantity. */
  digits: number;
  rounding: Rounding;
}

/** As much as any amount of the contract. */
const MOST = 100_000_000_000;

/** Characters; what is longer is no amount, and is not searched for one. */
const LONGEST = 40;

/** A currency's sign or its three letters, before or after. */
const SIGN = String.raw`(?:\p{Sc}|[A-Z]{1,3}\p{Sc}|[A-Z]{3})`;
const BARE = new RegExp(
  `^(-?)\\s*${SIGN}?\\s*(-?)\\s*([\\d.,'\\s]*\\d[\\d.,'\\s]*?)\\s*(-?)\\s*${SIGN}?$`,
  'u',
);

/** Digits alone, or in threes with one and the same mark between them. */
const grouped = (between: string) =>
  `(?<whole>\\d+|\\d{1,3}(?:(?<between>[${between}])\\d{3})(?:\\k<between>\\d{3})*)`;
const WRITTEN: Record<DecimalMark, RegExp> = {
  '.': new RegExp(`^${grouped(",' ")}?(?:\\.(?<fraction>\\d*))?$`),
  ',': new RegExp(`^${grouped(".' ")}?(?:,(?<fraction>\\d*))?$`),
};

/**
 * Reads an amount as a price file writes it, in whole minor units (or thousandths, by `digits`). Every
 * amount of a file has the same decimal mark, so that nothing is guessed line by line; further decimals
 * are rounded.
 * @param cell a text, or a number of a spreadsheet
 */
export function readAmount(cell: string | number, form: AmountForm): CellAmount {
  const text = typeof cell === 'number' ? decimalOf(cell) : cell;
  const mark = typeof cell === 'number' ? '.' : form.mark;
  const plain = text
    .replace(/[\u00a0\u2009\u202f]/g, ' ')
    .replaceAll('’', "'")
    .trim();
  if (plain === '') return { ok: false, why: 'empty' };
  if (plain.length > LONGEST) return { ok: false, why: 'unreadable' };
  // Most cells are figures and nothing else: a hundred thousand lines have several of them each.
  const parts = /^[\d.,]+$/.test(plain) ? ['', '', '', plain, ''] : BARE.exec(plain);
  const [, before = '', inside = '', number = '', after = ''] = parts ?? [];
  const { whole = '', fraction = '' } = WRITTEN[mark].exec(number)?.groups ?? {};
  if (whole + fraction === '') return { ok: false, why: 'unreadable' };
  const figures = whole.replace(/\D/g, '') + fraction;
  if (before + inside + after !== '' && Number(figures) !== 0)
    return { ok: false, why: 'below-zero' };
  const more = form.digits - fraction.length;
  const amount = more >= 0 ? Number(figures + '0'.repeat(more)) : rounded(figures, -more, form);
  return amount > MOST ? { ok: false, why: 'too-much' } : { ok: true, amount };
}

/** Figures without the last so many of them, rounded by the shop's rule and not by binary fractions. */
const rounded = (figures: string, surplus: number, { rounding }: AmountForm): number =>
  Number(divideRounded(BigInt(figures), 10n ** BigInt(surplus), rounding));

/** A spreadsheet's number without an exponent. Eight decimals are more than any price has. */
const decimalOf = (cell: number): string =>
  Number.isFinite(cell) && Math.abs(cell) < 1e15 ? cell.toFixed(8) : 'too large';

/**
 * The decimal mark that amounts of a file are written with; null where they leave it open (whole numbers,
 * or a single mark before three figures in all of them).
 */
export function decimalMarkOf(texts: Iterable<string>): DecimalMark | null {
  let votes = 0;
  for (const text of texts) {
    const marks = text.match(/[.,]/g) ?? [];
    const last = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
    const decimals = /^\d*/.exec(text.slice(last + 1))?.[0].length ?? 0;
    const decides =
      marks.length > 0 && (new Set(marks).size === 2 || (marks.length === 1 && decimals !== 3));
    if (decides) votes += text[last] === ',' ? 1 : -1;
  }
  if (votes === 0) return null;
  return votes > 0 ? ',' : '.';
}
