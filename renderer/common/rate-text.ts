/** 100 % in millionths. */
export const WHOLE = 1_000_000;

/**
 * A rate as typed in percent, in millionths: `6.25` or `6,25` is 62,500; null when it is not a rate
 * from 0 to `most` with at most four decimals.
 * @param most millionths
 */
export function readRate(typed: string, most = WHOLE): number | null {
  const match = /^(\d{1,4})(?:[.,](\d{0,4}))?\s*%?$/.exec(typed.trim());
  if (match === null) return null;
  const ppm = Number((match[1] ?? '') + (match[2] ?? '').padEnd(4, '0'));
  return ppm <= most ? ppm : null;
}

/** Millionths as one would type the percentage: 62,500 is `6.25`. */
export function writeRate(ppm: number): string {
  const digits = String(ppm).padStart(5, '0');
  const decimals = digits.slice(-4).replace(/0+$/, '');
  return decimals === '' ? digits.slice(0, -4) : `${digits.slice(0, -4)}.${decimals}`;
}
