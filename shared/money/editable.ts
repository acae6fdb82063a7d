import { minorDigits, minorToDecimal } from './format.ts';

/** The mark that a locale writes before decimals: '.' in en-US, ',' in de-DE. */
export function decimalMark(locale: string): string {
  const parts = new Intl.NumberFormat(locale, { numberingSystem: 'latn' }).formatToParts(1.5);
  return parts.find((part) => part.type === 'decimal')?.value ?? '.';
}

/**
 * An amount as one would type it, for a field: '1234.50' or '1234,50', without thousands or a sign
 * of the currency. `parseMoney` reads it back.
 * @param minor integer minor units
 */
export const editableMoney = (minor: number, currency: string, locale: string): string =>
  minorToDecimal(minor, minorDigits(currency)).replace('.', decimalMark(locale));

/** Whole thousandths as one would type a quantity: '1.5' or '1,5'. `parseQuantity` reads it back. */
export const editableQuantity = (thousandths: number, locale: string): string =>
  minorToDecimal(thousandths, 3)
    .replace(/\.?0+$/, '')
    .replace('.', decimalMark(locale));
