import { plainCharacters } from '../../../trade/index.ts';

/** The digits of a reading as somebody typed them, for what fingers do to digits. */

export interface TypedNumber {
  readonly negative: boolean;
  /** Without sign and point: `68021` of `68.021`. */
  readonly digits: string;
  /** How many of them stand behind the point. */
  readonly decimals: number;
  readonly separator: '.' | ',' | '';
}

const NUMBER = /^([+-]?) ?(\d*)(?:([.,])(\d+))?/;
const FRACTION = /\d ?\/ ?\d/;

/** The number at the head of a text; null for a fraction, whose digits say nothing of its size. */
export function typedNumber(text: string): TypedNumber | null {
  const plain = plainCharacters(text);
  if (FRACTION.test(plain)) return null;
  const [, sign = '', whole = '', separator = '', behind = ''] = NUMBER.exec(plain) ?? [];
  if (whole === '' && behind === '') return null;
  return {
    negative: sign === '-',
    digits: whole + behind,
    decimals: behind.length,
    separator: separator === '.' || separator === ',' ? separator : '',
  };
}

/** The value of digits with a point before the last `decimals` of them. */
export function valueOfDigits({
  negative,
  digits,
  decimals,
}: Pick<TypedNumber, 'negative' | 'digits' | 'decimals'>): number {
  const padded = digits.padStart(decimals + 1, '0');
  const point = padded.length - decimals;
  const value = Number(`${padded.slice(0, point)}.${padded.slice(point)}0`);
  return negative ? -value : value;
}
