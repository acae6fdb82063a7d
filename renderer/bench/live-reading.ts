import {
  BASE_UNIT_OF,
  convert,
  dimensionOf,
  judge,
  parseReading,
  type Slip,
  suspectSlip,
  toBase,
  type Unit,
  type Verdict,
} from '../../shared/trade/index.ts';
import type { SheetBand } from '../common/measure/measure-words.ts';

/** What can be said of a reading while it is being typed, before the desk has it. */
export type LiveReading =
  | { readonly state: 'empty' }
  | { readonly state: 'unreadable'; readonly reason: string }
  | {
      readonly state: 'read';
      readonly value: number;
      readonly unit: Unit;
      /** In the base unit. */
      readonly valueBase: number;
      readonly verdict: Verdict | 'no-band';
      readonly conformance: number | null;
      readonly slip: Slip | null;
    };

const base = (unit: Unit): Unit => BASE_UNIT_OF[dimensionOf(unit)];

/**
 * Reads, converts, compares and judges what stands in the field, as the desk will when it is recorded.
 * @param band limits in the base unit
 * @param uncertaintyBase expanded (k = 2), base unit; 0 without a gauge
 */
export function liveReading(
  text: string,
  unit: Unit,
  band: SheetBand,
  uncertaintyBase: number,
): LiveReading {
  if (text.trim() === '') return { state: 'empty' };
  try {
    const reading = parseReading(text, unit);
    const valueBase = toBase(reading.value, reading.unit);
    const limits = { low: band.low ?? undefined, high: band.high ?? undefined };
    if (limits.low === undefined && limits.high === undefined)
      return {
        state: 'read',
        ...reading,
        valueBase,
        verdict: 'no-band',
        conformance: null,
        slip: null,
      };
    const inTyped = (limit: number | undefined) =>
      limit === undefined ? undefined : convert(limit, base(reading.unit), reading.unit);
    return {
      state: 'read',
      value: reading.value,
      unit: reading.unit,
      valueBase,
      ...judge({ value: valueBase, ...limits, uncertainty: uncertaintyBase }),
      slip: suspectSlip(reading.value, { low: inTyped(limits.low), high: inTyped(limits.high) }),
    };
  } catch (error) {
    return {
      state: 'unreadable',
      reason: error instanceof RangeError ? error.message : 'That is not a reading.',
    };
  }
}
