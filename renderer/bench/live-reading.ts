import { parseReading, toBase, type Unit } from '../../shared/trade/index.ts';
import type { GaugeInHand } from '../../shared/work/bench/gauge-remark.ts';
import { judgeReading } from '../../shared/work/bench/judge-reading.ts';
import {
  questionReading,
  type ReadingQuestion,
  type ReadingToQuestion,
} from '../../shared/work/bench/question-reading.ts';
import { readingUncertainty } from '../../shared/work/bench/reading-uncertainty.ts';
import type { PlaceBand, ReadingVerdict } from '../../shared/work/bench/reading-verdict.ts';
import type { Feature } from '../../shared/work/features.ts';

export interface TypedReading {
  readonly text: string;
  /** What it is in when no unit is typed. */
  readonly unit: Unit;
  readonly feature: Feature;
  /** Limits in the base unit, and the share of a torque stage. */
  readonly place: PlaceBand & { readonly share: number };
  readonly gauge: GaugeInHand | null;
}

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
      /** Expanded (k = 2), base unit. */
      readonly uncertainty: number;
      readonly verdict: ReadingVerdict;
      readonly conformance: number | null;
      readonly slip: ReadingQuestion | null;
    };

/**
 * Reads, converts, compares and judges what stands in the field, as the desk will when it is recorded.
 * @param asked what a question about it goes by: the limits of its phase and the readings beside it
 */
export function liveReading(
  { text, unit, feature, place, gauge }: TypedReading,
  asked: Pick<ReadingToQuestion, 'low' | 'high' | 'wearLimit' | 'others'>,
): LiveReading {
  if (text.trim() === '') return { state: 'empty' };
  try {
    const { value, unit: typed } = parseReading(text, unit);
    const valueBase = toBase(value, typed);
    const uncertainty = readingUncertainty({ feature, text, value, unit: typed, gauge });
    return {
      state: 'read',
      value,
      unit: typed,
      valueBase,
      uncertainty,
      ...judgeReading({
        feature,
        share: place.share,
        value: valueBase,
        band: place,
        uncertainty,
        gauge,
      }),
      slip: questionReading({
        text,
        unit,
        feature,
        ...asked,
        resolution: gauge?.unit === unit ? gauge.resolution : null,
      }),
    };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { state: 'unreadable', reason: error.message };
  }
}
