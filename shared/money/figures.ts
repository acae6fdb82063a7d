import { minorToDecimal } from './format.ts';

/** `minorToDecimal` without the zeros at the end: 1500 thousandths are '1.5'. */
function shortDecimal(whole: number, digits: number, locale: string | undefined): string {
  const text = minorToDecimal(whole, digits);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  if (locale === undefined) return short;
  const format = new Intl.NumberFormat(locale, { maximumFractionDigits: digits });
  return format.format(short as `${number}`);
}

/**
 * A quantity as people read it: '1.5', '2', '-0.25'.
 * @param thousandths whole thousandths
 * @param locale BCP 47 tag for its decimal mark and thousands; a plain decimal without
 * @throws RangeError when `thousandths` is not a whole number
 */
export function formatQuantity(thousandths: number, locale?: string): string {
  if (!Number.isSafeInteger(thousandths)) {
    throw new RangeError('A quantity is a whole number of thousandths.');
  }
  return shortDecimal(thousandths, 3, locale);
}

/**
 * A tax rate as people read it: 62500 is '6.25 %'.
 * @param ppm whole millionths
 * @param locale BCP 47 tag for its decimal mark; a plain decimal without
 * @throws RangeError when `ppm` is not a whole number
 */
export function formatRate(ppm: number, locale?: string): string {
  if (!Number.isSafeInteger(ppm)) {
    throw new RangeError('A rate is a whole number of millionths.');
  }
  return `${shortDecimal(ppm, 4, locale)} %`;
}
