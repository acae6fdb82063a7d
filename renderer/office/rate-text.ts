/**
 * A tax rate as typed in percent, in millionths: `6.25` or `6,25` is 62,500; null when it is not a rate
 * from 0 to 100 with at most four decimals.
 */
export function readRate(typed: string): number | null {
  const match = /^(\d{1,3})(?:[.,](\d{0,4}))?\s*%?$/.exec(typed.trim());
  if (match === null) return null;
  const ppm = Number((match[1] ?? '') + (match[2] ?? '').padEnd(4, '0'));
  return ppm <= 1_000_000 ? ppm : null;
}

/** Millionths as one would type the percentage: 62,500 is `6.25`. */
export function writeRate(ppm: number): string {
  const digits = String(ppm).padStart(5, '0');
  const decimals = digits.slice(-4).replace(/0+$/, '');
  return decimals === '' ? digits.slice(0, -4) : `${digits.slice(0, -4)}.${decimals}`;
}
