import { toMinor } from './amount.ts';
import { decimalMark } from './editable.ts';
import { minorDigits } from './format.ts';

const LONGEST = 40;

/**
 * Reads an amount that somebody typed, in minor units. Point and comma are both read as the decimal
 * mark where only that makes sense ('12,50' and '12.50'), as thousands where only that does
 * ('1,234.50', '1.234,50'); one mark before exactly three digits is thousands when the locale
 * writes them so. The currency's sign or code may stand before or after.
 * @param currency ISO 4217 code
 * @param locale BCP 47 tag of who types
 * @throws RangeError with a sentence for the person who typed: unreadable, readable in two ways,
 * more decimals than the currency has, below zero, another currency's sign
 */
export function parseMoney(text: string, currency: string, locale = 'en'): number {
  const bare = withoutCurrency(plainDigits(text), text, currency, locale);
  const decimals = minorDigits(currency);
  const { whole, fraction } = splitNumber(bare, text, decimals, groupMark(locale));
  if (fraction.length > decimals) {
    throw new RangeError(
      decimals === 0
        ? `'${text}' has decimals, and ${currency} has none: type a whole number.`
        : `'${text}' has more than ${decimals} decimals: round it, and type it again.`,
    );
  }
  return toMinor(BigInt(whole + fraction.padEnd(decimals, '0')));
}

/** What a person may type for a quantity: up to a million and three decimals. */
const QUANTITY = /^(\d{1,7})?(?:([.,])(\d{0,3}))?$/;

/**
 * Reads a quantity that somebody typed, in whole thousandths: '1.5' and '1,5' are 1500.
 * @param locale BCP 47 tag of who types
 * @throws RangeError with a sentence for the person who typed: unreadable, more than three decimals,
 * or '1,500' where the decimal mark is a point, which may be one and a half or fifteen hundred
 */
export function parseQuantity(text: string, locale = 'en'): number {
  const plain = plainDigits(text);
  if (plain === '') throw new RangeError('Nothing is typed: type a quantity, such as 1 or 1.5.');
  const match = QUANTITY.exec(plain);
  const [, whole = '', mark = '', fraction = ''] = match ?? [];
  if (whole + fraction === '') {
    throw new RangeError(
      `'${text}' is not a quantity: type a number such as 2 or 1.5, with three decimals at most.`,
    );
  }
  const otherMark = mark !== '' && mark !== decimalMark(locale);
  if (otherMark && fraction.length === 3 && /^[1-9]/.test(whole)) {
    throw new RangeError(
      `'${text}' can be read in two ways: type it without a mark between thousands, 1500 or 1${decimalMark(locale)}5.`,
    );
  }
  return toMinor(BigInt(whole + fraction.padEnd(3, '0')));
}

/** Marks of the writing direction, which an amount is written with in some languages, and their like. */
const UNSEEN = /[\u061C\u200B-\u200F\u202A-\u202E\u2060\u2066-\u2069\uFEFF]/g;

/** Full-width and Arabic digits, minus signs and hard spaces as a plain keyboard has them. */
function plainDigits(text: string): string {
  return text
    .normalize('NFKC')
    .replace(UNSEEN, '')
    .replace(/[\u0660-\u0669]/g, (digit) => String(digit.charCodeAt(0) - 0x660))
    .replace(/[\u06F0-\u06F9]/g, (digit) => String(digit.charCodeAt(0) - 0x6f0))
    .replace(/\u066B/g, '.')
    .replace(/\u066C/g, ',')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/\u2019/g, "'")
    .replace(/\s+/g, ' ')
    .trim();
}

/** Signs and codes that may stand beside an amount of this currency. */
function currencySigns(currency: string, locale: string): string[] {
  const signs = (['symbol', 'narrowSymbol', 'code'] as const).flatMap((currencyDisplay) =>
    [locale, 'en'].map((tag) =>
      new Intl.NumberFormat(tag, { style: 'currency', currency, currencyDisplay })
        .formatToParts(0)
        .filter(({ type, value }) => type === 'currency' && value !== '')
        .map((part) => part.value.normalize('NFKC').replace(UNSEEN, '').toLowerCase()),
    ),
  );
  return signs.flat();
}

function withoutCurrency(plain: string, text: string, currency: string, locale: string): string {
  if (plain === '') throw new RangeError('Nothing is typed: type an amount, such as 12.50.');
  if (plain.length > LONGEST) {
    throw new RangeError(`An amount has at most ${LONGEST} characters: type only the number.`);
  }
  if (/^\D*-|-\D*$|^\(/.test(plain)) {
    throw new RangeError(`'${text}' is below zero: type the amount without a sign.`);
  }
  const bare = withoutSign(plain, currencySigns(currency, locale));
  const match = /^([^\d.,']*)([\d.,' ]*?)([^\d.,']*)$/.exec(bare);
  const [, before = '', number = '', after = ''] = match ?? [];
  if (!/\d/.test(number)) {
    throw new RangeError(`'${text}' is not an amount: type a number, such as 12.50.`);
  }
  if (before.trim() + after.trim() !== '') {
    throw new RangeError(`'${text}' is not in ${currency}: type only the number.`);
  }
  return number.trim();
}

/** Signs are cut off whole: some have dots in them, which are no decimal marks. */
function withoutSign(plain: string, signs: readonly string[]): string {
  const longestFirst = signs.toSorted((a, b) => b.length - a.length);
  const before = longestFirst.find((sign) => plain.toLowerCase().startsWith(sign)) ?? '';
  const rest = plain.slice(before.length);
  const after = longestFirst.find((sign) => rest.toLowerCase().endsWith(sign)) ?? '';
  return rest.slice(0, rest.length - after.length).trim();
}

/** The mark that the locale puts between thousands; empty for a space. */
function groupMark(locale: string): string {
  const parts = new Intl.NumberFormat(locale, { useGrouping: true }).formatToParts(1_234_567);
  return plainDigits(parts.find((part) => part.type === 'group')?.value ?? '');
}

interface SplitNumber {
  readonly whole: string;
  readonly fraction: string;
}

/** Groups of three, or of two before the last three, as they are written in South Asia. */
const GROUPED = /^\d{1,3}(?:([., '])\d{3})(?:\1\d{3})*$|^\d{1,2}(?:([., '])\d{2})+\2\d{3}$/;

function splitNumber(number: string, text: string, decimals: number, group: string): SplitNumber {
  const marks = number.match(/[.,]/g) ?? [];
  const last = Math.max(number.lastIndexOf('.'), number.lastIndexOf(','));
  const mark = number[last] ?? '';
  if (marks.length === 0 || (marks.length > 1 && new Set(marks).size === 1)) {
    return { whole: ungrouped(number, text), fraction: '' };
  }
  const whole = number.slice(0, last);
  const fraction = number.slice(last + 1);
  if (!/^\d*$/.test(fraction) || whole.includes(mark)) throw unreadable(text);
  const oneMarkBeforeThree =
    marks.length === 1 && /^[1-9]\d{0,2}$/.test(whole) && fraction.length === 3;
  if (oneMarkBeforeThree && decimals < 3) {
    if (mark === group) return { whole: whole + fraction, fraction: '' };
    throw twoWays(text);
  }
  // With three decimals a lone mark is the decimal one, unless the locale parts thousands by it.
  if (oneMarkBeforeThree && mark === group) throw twoWays(text);
  return { whole: ungrouped(whole, text), fraction };
}

function ungrouped(whole: string, text: string): string {
  if (whole !== '' && !/^\d+$/.test(whole) && !GROUPED.test(whole)) throw unreadable(text);
  return whole.replace(/\D/g, '');
}

const unreadable = (text: string): RangeError =>
  new RangeError(`'${text}' is not an amount: type it without marks between thousands, 1234.50.`);

const twoWays = (text: string): RangeError =>
  new RangeError(
    `'${text}' can be read in two ways: type it without marks between thousands, 1234.50.`,
  );
