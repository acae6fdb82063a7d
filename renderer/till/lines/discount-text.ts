import type { Discount } from '../../../shared/contract/till/index.ts';
import { editableMoney, parseMoney } from '../../../shared/money/index.ts';
import { readRate, writeRate } from '../../common/rate-text.ts';
import type { MoneyRules } from './draft-line.ts';

type Money = Pick<MoneyRules, 'currency' | 'locale'>;

/**
 * A discount as typed: `10 %` is a share, `12.50` an amount; null for none.
 * @throws RangeError with a sentence for who typed it
 */
export function readDiscount(typed: string, { currency, locale }: Money): Discount | null {
  const text = typed.trim();
  if (text === '') return null;
  if (text.endsWith('%')) {
    const ppm = readRate(text);
    if (ppm === null || ppm === 0)
      throw new RangeError('Type a share above 0 and up to 100 %, for example 10 %.');
    return { by: 'share', ppm };
  }
  const amount = parseMoney(text, currency, locale);
  if (amount === 0) throw new RangeError('A discount is more than zero: leave it empty for none.');
  return { by: 'amount', amount };
}

/** A discount as one would type it. */
export function writeDiscount(discount: Discount | null, { currency, locale }: Money): string {
  if (discount === null) return '';
  return discount.by === 'share'
    ? `${writeRate(discount.ppm)} %`
    : editableMoney(discount.amount, currency, locale);
}
