import { displayNumber } from '../../shared/trade/index.ts';

/** What the spec book allows a pressure to be, in words; both limits in kPa. */
export function pressureBand(
  { low, high }: { low: number | null; high: number | null },
  unit: 'kPa' | 'psi',
): string {
  if (low !== null && high !== null)
    return `${displayNumber(low, unit)} to ${displayNumber(high, unit)} ${unit}`;
  if (low !== null) return `at least ${displayNumber(low, unit)} ${unit}`;
  return high === null ? 'no limits' : `at most ${displayNumber(high, unit)} ${unit}`;
}
