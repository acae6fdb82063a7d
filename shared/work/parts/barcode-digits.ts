/** Lengths of the numbers that GS1 gives a check digit: GTIN-8, -12, -13, -14. */
const GTIN = /^(\d{8}|\d{12,14})$/;

/**
 * The last digit of a GS1 number from those before it: from the right they weigh 3 and 1 by turns, and the
 * check digit brings their sum up to a multiple of ten (GS1, How to calculate a check digit manually).
 * @param digits without the check digit
 * @throws RangeError for anything but digits
 */
export function gs1CheckDigit(digits: string): number {
  if (!/^\d+$/.test(digits)) throw new RangeError(`'${digits}' is not a row of digits.`);
  const sum = [...digits]
    .toReversed()
    .reduce((total, digit, place) => total + Number(digit) * (place % 2 === 0 ? 3 : 1), 0);
  return (10 - (sum % 10)) % 10;
}

/** Whether a code is as long as a trade item's number, and its last digit doesn't go with the others. */
export const isMisreadGtin = (code: string): boolean =>
  GTIN.test(code) && gs1CheckDigit(code.slice(0, -1)) !== Number(code.at(-1));
