import {
  BASE_UNIT_OF,
  convert,
  dimensionOf,
  parseReading,
  type Slip,
  suspectSlip,
  toBase,
  type Unit,
} from '../../shared/trade/index.ts';
import {
  type PlaceBand,
  type ReadingVerdict,
  verdictOn,
} from '../../shared/work/bench/reading-verdict.ts';

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
      readonly verdict: ReadingVerdict;
      readonly conformance: number | null;
      /** `likely` in the unit typed. */
      readonly slip: Slip | null;
    };

/**
 * Reads, converts, compares and judges what stands in the field, as the desk will when it is recorded.
 * @param band limits in the base unit
 * @param uncertaintyBase expanded (k = 2), base unit; 0 without a gauge
 * @param suspect names the slip that would explain a value, base unit; by the band unless it is given
 */
export function liveReading(
  text: string,
  unit: Unit,
  band: PlaceBand,
  uncertaintyBase: number,
  suspect: (valueBase: number) => Slip | null = (valueBase) => againstBand(valueBase, band),
): LiveReading {
  if (text.trim() === '') return { state: 'empty' };
  try {
    const { value, unit: typed } = parseReading(text, unit);
    const valueBase = toBase(value, typed);
    return {
      state: 'read',
      value,
      unit: typed,
      valueBase,
      ...verdictOn(valueBase, band, uncertaintyBase),
      slip: inTyped(suspect(valueBase), typed),
    };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { state: 'unreadable', reason: error.message };
  }
}

const againstBand = (valueBase: number, { low, high }: PlaceBand): Slip | null =>
  suspectSlip(valueBase, { low: low ?? undefined, high: high ?? undefined });

const inTyped = (slip: Slip | null, typed: Unit): Slip | null =>
  slip && { ...slip, likely: convert(slip.likely, BASE_UNIT_OF[dimensionOf(typed)], typed) };
