/**
 * An amount as people read it.
 * @param minor integer minor units (cents, fils, yen)
 * @param currency ISO 4217 code
 * @param locale BCP 47 tag
 * @throws RangeError when `minor` is not a safe integer
 */
export function formatMoney(minor: number, currency: string, locale: string): string {
  if (!Number.isSafeInteger(minor))
    throw new RangeError('An amount is a whole number of minor units.');
  const digits = minorDigits(currency);
  const format = new Intl.NumberFormat(locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
  // A decimal string keeps every digit: dividing would pass through binary floating point.
  return format.format(minorToDecimal(minor, digits) as `${number}`);
}

/** How many decimals a currency has (ISO 4217, as Intl knows it): 2 for USD, 0 for JPY, 3 for KWD. */
export function minorDigits(currency: string): number {
  const options = new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions();
  return options.maximumFractionDigits ?? 2;
}

/** `123456` with 2 digits is `1234.56`. */
export function minorToDecimal(minor: number, digits: number): string {
  const sign = minor < 0 ? '-' : '';
  const text = String(Math.abs(minor)).padStart(digits + 1, '0');
  return digits === 0 ? sign + text : `${sign}${text.slice(0, -digits)}.${text.slice(-digits)}`;
}
