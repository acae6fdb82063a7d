import {
  convert,
  difference,
  gaugeUncertainty,
  largestErrorAt,
  plainCharacters,
  toBase,
  torqueGiven,
  type Unit,
  uncertaintyAt,
  type WrenchError,
} from '../../trade/index.ts';
import type { Feature } from '../features.ts';
import type { GaugeInHand } from './gauge-remark.ts';
import { type Family, HABITS } from './slips/feature-habits.ts';
import { typedNumber } from './slips/typed-number.ts';
import { isTorque } from './torque-check.ts';

/** How well a reading is known, by the gauge that took it, or by what can be said without one. */

export interface TakenReading {
  feature: Feature;
  /** As typed: its last digit says what was read. */
  text: string;
  value: number;
  unit: Unit;
  gauge: GaugeInHand | null;
}

/**
 * Expanded uncertainty (k = 2) in the base unit. Without a gauge it is that of a usual one for such a
 * feature, read to the last digit typed: a reading is never exact because nobody said what took it. Of a
 * torque, which is set and not read, it is what the wrench's papers allow.
 */
export function readingUncertainty({ feature, text, value, unit, gauge }: TakenReading): number {
  if (isTorque(feature)) {
    const { least, most } = torqueGiven(Math.abs(toBase(value, unit)), wrenchErrorOf(gauge));
    return (most - least) / 2;
  }
  if (gauge !== null) {
    const shown = convert(value, unit, gauge.unit);
    return differenceInBase(uncertaintyAt(gauge, shown), gauge.unit);
  }
  return gaugeUncertainty({
    resolution: differenceInBase(lastDigit(text), unit),
    maxError: usualError(feature, Math.abs(toBase(value, unit))),
  });
}

/** The widest of ISO 6789's usual classes (from memory): what a wrench that nobody named is held to. */
const UNNAMED_WRENCH: WrenchError = { kind: 'share', share: 0.06 };

/** A wrench's error as its papers state it, in N·m. */
export function wrenchErrorOf(gauge: GaugeInHand | null): WrenchError {
  if (gauge === null) return UNNAMED_WRENCH;
  return gauge.errorKind === 'of-reading'
    ? { kind: 'share', share: gauge.maxError / 100 }
    : { kind: 'amount', amount: toBase(largestErrorAt(gauge, gauge.rangeHigh), gauge.unit) };
}

/** An uncertainty is a difference: it takes the factor of a unit and never the zero of a scale. */
const differenceInBase = (amount: number, unit: Unit): number =>
  difference(toBase(amount, unit), toBase(0, unit));

const FRACTION = /\/ ?(\d+)/;

/** What one step of the last digit is worth, in the unit typed; of a fraction, one of its parts. */
function lastDigit(text: string): number {
  const parts = Number(FRACTION.exec(plainCharacters(text))?.[1] ?? Number.NaN);
  if (parts > 0) return 1 / parts;
  return 10 ** -(typedNumber(text)?.decimals ?? 0);
}

/**
 * Largest error of the gauge that is usual for a feature: an amount in the base unit, or a share of the
 * reading. Common practice, no source; of the pressure gauge class 2.5 of EN 837-1, from memory.
 */
const USUAL_ERRORS: Record<Family, { amount?: number; share?: number }> = {
  diameter: { amount: 0.005 },
  gap: { amount: 0.01 },
  flatness: { amount: 0.01 },
  size: { amount: 0.03 },
  torque: { share: 0.06 },
  pressure: { share: 0.025 },
  resistance: { share: 0.015 },
  speed: { share: 0.01 },
};

function usualError(feature: Feature, size: number): number {
  const { family, resolution, micrometer } = HABITS[feature];
  const { amount = 0, share = 0 } = USUAL_ERRORS[micrometer === true ? 'diameter' : family];
  // Sizes that are not lengths (a volume) have no error in common with them: two steps of their gauge.
  const own = family === 'size' && resolution > 0.05 ? 2 * resolution : amount;
  return own + share * size;
}
