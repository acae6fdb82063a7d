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

/** Currencies of ISO 4217 that don't have two decimals, by how many they have. */
const OTHER_DIGITS: readonly (readonly [number, readonly string[]])[] = [
  [
    0,
    [
      ...['BIF', 'CLP', 'DJF', 'GNF', 'ISK', 'JPY', 'KMF', 'KRW', 'PYG', 'RWF', 'UGX', 'UYI'],
      ...['VND', 'VUV', 'XAF', 'XOF', 'XPF'],
    ],
  ],
  [3, ['BHD', 'IQD', 'JOD', 'KWD', 'LYD', 'OMR', 'TND']],
  [4, ['CLF', 'UYW']],
];

/**
 * How many decimals a currency has: 2 for USD, 0 for JPY, 3 for KWD. After ISO 4217 and not after Intl, which
 * leaves the decimals of some out (none for HUF or IQD) and may do so otherwise in another version: amounts that
 * are kept would change a hundredfold.
 */
export const minorDigits = (currency: string): number =>
  OTHER_DIGITS.find(([, currencies]) => currencies.includes(currency))?.[0] ?? 2;

/** `123456` with 2 digits is `1234.56`. */
export function minorToDecimal(minor: number, digits: number): string {
  const sign = minor < 0 ? '-' : '';
  const text = String(Math.abs(minor)).padStart(digits + 1, '0');
  return digits === 0 ? sign + text : `${sign}${text.slice(0, -digits)}.${text.slice(-digits)}`;
}
