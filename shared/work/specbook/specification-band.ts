import {
  BASE_UNIT_OF,
  convert,
  dimensionOf,
  parseReading,
  type Unit,
  unitLabel,
} from '../../trade/index.ts';
import { FEATURE_UNITS, type Feature } from '../features.ts';
import { doubtWearLimit, isAllowance, sizeAfterWear } from './wear-limit.ts';

/** A specification's limits in the base unit of its feature; a side without a limit is left out. */
export interface SpecificationBand {
  low?: number;
  high?: number;
  aim?: number;
  wearLimit?: number;
}

export interface PrintedLimits {
  low: string;
  high: string;
  aim: string;
  wearLimit: string;
  unit: Unit;
}

export type BandIssue = {
  path: string;
  message: string;
  /** What to write instead, if that is what the source means. */
  instead?: string;
};

const FIELDS = ['low', 'high', 'aim', 'wearLimit'] as const;

/**
 * Reads limits as a source prints them. Nothing is thrown: what is wrong comes back by field, so that the
 * screen and the desk say the same.
 */
export function readBand(
  feature: Feature,
  printed: PrintedLimits,
): { ok: true; band: SpecificationBand } | { ok: false; issues: BandIssue[] } {
  const base = FEATURE_UNITS[feature];
  if (dimensionOf(printed.unit) !== dimensionOf(base))
    return {
      ok: false,
      issues: [
        {
          path: 'unit',
          message: `This is given in ${unitLabel(base)} or a unit that measures the same, not in ${unitLabel(printed.unit)}.`,
        },
      ],
    };
  const band: SpecificationBand = {};
  const issues: BandIssue[] = [];
  for (const field of FIELDS) {
    const text = printed[field];
    if (text === '') continue;
    try {
      const { value, unit } = parseReading(text, printed.unit);
      if (unit !== printed.unit)
        issues.push({
          path: field,
          message: 'Leave the unit out here: it is chosen once for all.',
        });
      else band[field] = convert(value, unit, BASE_UNIT_OF[dimensionOf(unit)]);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      issues.push({ path: field, message: error.message });
    }
  }
  if (issues.length === 0) issues.push(...contradictions(band));
  if (issues.length === 0) issues.push(...settleWearLimit(feature, printed, band));
  return issues.length > 0 ? { ok: false, issues } : { ok: true, band };
}

/** Takes what a part may wear by as the size at which it is replaced, and doubts what can't be a wear limit. */
function settleWearLimit(
  feature: Feature,
  { wearLimit: text, unit }: PrintedLimits,
  band: SpecificationBand,
): BandIssue[] {
  const { wearLimit } = band;
  if (wearLimit === undefined) return [];
  if (isAllowance(feature, text)) {
    const size = sizeAfterWear(feature, band, wearLimit);
    if (size === undefined || size <= 0)
      return [{ path: 'wearLimit', message: 'No part wears by as much. Check the figure.' }];
    band.wearLimit = size;
    return [];
  }
  const doubt = doubtWearLimit(feature, band, wearLimit, { text, unit });
  if (doubt === null) return [];
  const { message, allowance } = doubt;
  return [{ path: 'wearLimit', message, ...(allowance === null ? {} : { instead: allowance }) }];
}

function contradictions({ low, high, aim }: SpecificationBand): BandIssue[] {
  if (low === undefined && high === undefined)
    return [{ path: 'low', message: 'Give a low limit, a high limit or both.' }];
  if (low !== undefined && high !== undefined && low > high)
    return [{ path: 'high', message: 'The high limit lies below the low one.' }];
  const outside =
    aim !== undefined && ((low !== undefined && aim < low) || (high !== undefined && aim > high));
  return outside ? [{ path: 'aim', message: 'The aim lies outside the limits.' }] : [];
}
