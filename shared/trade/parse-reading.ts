import { demandFinite } from './demand.ts';
import { plainCharacters } from './keyboard.ts';
import { unitSpelt } from './unit-spellings.ts';
import { demandAboveAbsoluteZero, dimensionOf, type Unit } from './units.ts';

/** A reading as it was taken: the value in its own unit, and the text word for word. */
export interface Reading {
  readonly value: number;
  readonly unit: Unit;
  readonly text: string;
}

const LONGEST = 60;
const SIGN = /^[+-]?/;
/** 3/8, 1-3/8, 1 3/8 */
const FRACTION = /^(?:(\d+)(?:-| ))?(\d+) ?\/ ?(\d+)(?![\d.,])/;
const DECIMAL = /^(?:\d+(?:[.,]\d+)?|[.,]\d+)/;
/** Units in which thousands are usual and three decimals are not. */
const THOUSANDS_USUAL: readonly Unit[] = [
  ...(['1/min', 'rpm', 'kPa', 'psi', 'N', 'lbf', 'Ω'] as const),
  ...(['um', 'thou', 'cm3', 'ml'] as const),
];

/**
 * Reads what somebody typed for a measurement: a decimal (point or comma), a fraction or a mixed
 * number, with or without a unit. The unit typed wins over the one given, and the value stays in
 * it: nothing is converted. Thousands are never separated: a lone comma is a decimal
 * comma, and is refused where it looks like thousands in a unit that usually runs into them.
 *
 * `parseReading('6 thou', 'mm')` is `{ value: 6, unit: 'thou', text: '6 thou' }`.
 *
 * @param unit what the number is in when no unit is typed; a unit typed must measure the same thing
 * @throws {RangeError} with a sentence for the person who typed, when it isn't one reading, when
 * it could be read in two ways, or when its unit measures something else
 */
export function parseReading(text: string, unit: Unit): Reading {
  const wanted = dimensionOf(unit);
  const plain = plainCharacters(text);
  if (plain === '') {
    throw new RangeError('Nothing is typed: type a number, with its unit if it is not the usual.');
  }
  if (plain.length > LONGEST) {
    throw new RangeError(
      `A reading has at most ${LONGEST} characters: type the number and its unit.`,
    );
  }
  const sign = SIGN.exec(plain)?.[0] ?? '';
  const unsigned = plain.slice(sign.length).trimStart();
  const number = leadingFraction(unsigned) ?? leadingDecimal(unsigned);
  if (number === null) {
    throw new RangeError(`'${text}' is not a reading: begin with a number, such as 0.15 or 1-3/8.`);
  }
  const rest = unsigned.slice(number.length).trim();
  demandNoSecondNumber(rest, text);
  const typed = rest === '' ? unit : unitSpelt(rest, unit);
  if (dimensionOf(typed) !== wanted) {
    throw new RangeError(
      `'${text}' is in ${typed}, which measures ${dimensionOf(typed)}; here ${wanted} is wanted, in ${unit} or the like.`,
    );
  }
  if (THOUSANDS_USUAL.includes(typed) && /^[1-9]\d{0,2},\d{3}(?!\d)/.test(unsigned)) {
    throw new RangeError(
      `'${text}' could be thousands or decimals: leave the comma out, or write a decimal point.`,
    );
  }
  const value = sign === '-' && number.value !== 0 ? -number.value : number.value;
  demandFinite(value, 'a reading');
  demandAboveAbsoluteZero(value, typed);
  return { value, unit: typed, text };
}

interface LeadingNumber {
  readonly value: number;
  readonly length: number;
}

function leadingFraction(text: string): LeadingNumber | null {
  const match = FRACTION.exec(text);
  if (match === null) {
    return null;
  }
  const [all, whole, above, below] = match;
  const numerator = Number(above);
  const denominator = Number(below);
  if (denominator === 0) {
    throw new RangeError(`'${all}' divides by zero.`);
  }
  if (whole === undefined) {
    return { value: numerator / denominator, length: all.length };
  }
  if (numerator >= denominator) {
    throw new RangeError(
      `'${all}' is not a mixed number: the part after the whole must be less than one.`,
    );
  }
  return {
    value: (Number(whole) * denominator + numerator) / denominator,
    length: all.length,
  };
}

function leadingDecimal(text: string): LeadingNumber | null {
  const digits = DECIMAL.exec(text)?.[0];
  return digits === undefined
    ? null
    : { value: Number(digits.replace(',', '.')), length: digits.length };
}

function demandNoSecondNumber(rest: string, text: string): void {
  if (/^[-+] ?[\d.,]/.test(rest)) {
    throw new RangeError(`'${text}' looks like a range or a sum: type one reading.`);
  }
  // The one unit that begins with a digit.
  if (/^[.,'/]? ?\d/.test(rest) && !/^1 ?\/ ?min$/i.test(rest)) {
    throw new RangeError(
      `'${text}' can be read in more than one way: type one number, without spaces or marks between thousands, such as 1234.5.`,
    );
  }
}
