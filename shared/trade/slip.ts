import { type Band, demandBand } from './band.ts';
import { demandFinite } from './demand.ts';
import { fraction, over, times, toNumber } from './exact.ts';

/**
 * How a right reading was written wrong: `decimal`, the point one or two places off; `inch`, inches
 * for millimetres or the reverse; `foot-inch`, pound-feet for pound-inches or the reverse.
 */
export type SlipKind = 'decimal' | 'inch' | 'foot-inch';

export interface Slip {
  readonly kind: SlipKind;
  /**
   * What was likely meant, in the unit of the value, to the last digit: whoever shows it rounds it. An
   * offer: nothing is changed by itself.
   */
  readonly likely: number;
}

/** Factors above one, the nearest to one first. Each is tried both ways. */
const SLIPS: readonly { readonly kind: SlipKind; readonly factor: number }[] = [
  { kind: 'decimal', factor: 10 },
  { kind: 'foot-inch', factor: 12 },
  { kind: 'inch', factor: 25.4 },
  { kind: 'decimal', factor: 100 },
];

/**
 * How far the unstated limit of a one-sided band is taken to lie from the stated one, as a factor.
 * Without it every part worn past a high limit would be taken for a slip, since any factor brings
 * it 'inside'. Four is this program's choice: no source.
 */
const REACH = 4;

/** Rounding dust of limits that came out of a computation, as a share of the limit. */
const DUST = 1e-9;

/**
 * Names the slip that would explain a value outside its band: a factor of 10, 12, 25.4 or 100
 * (either way) that brings it inside; the factor nearest to one wins. `null` for a value inside the
 * band (limits included), for zero, and when no factor explains it.
 *
 * A thousandth of an inch written as a hundredth of a millimetre is off by 2.54, which honest wear
 * reaches too, and is left alone. A band with one limit is taken to reach a factor of four from it; a
 * one-sided band at or below zero has no scale to compare with and explains nothing.
 *
 * @throws {RangeError} when the value or a limit isn't finite, or low is above high
 */
export function suspectSlip(value: number, band: Band): Slip | null {
  demandFinite(value, 'the value');
  demandBand(band);
  if (isInside(value, band) || value === 0) {
    return null;
  }
  const range = withBothLimits(band);
  if (range === null) {
    return null;
  }
  for (const { kind, factor } of SLIPS) {
    for (const likely of [multiplied(value, factor), divided(value, factor)]) {
      if (isInside(likely, range)) {
        return { kind, likely };
      }
    }
  }
  return null;
}

function withBothLimits({ low, high }: Band): Band | null {
  if (low !== undefined && high !== undefined) {
    return { low, high };
  }
  if (low !== undefined && low > 0) {
    return { low, high: low * REACH };
  }
  if (high !== undefined && high > 0) {
    return { low: high / REACH, high };
  }
  return null;
}

function isInside(value: number, { low, high }: Band): boolean {
  return (
    (low === undefined || value >= low - DUST * Math.abs(low)) &&
    (high === undefined || value <= high + DUST * Math.abs(high))
  );
}

function multiplied(value: number, factor: number): number {
  return toNumber(times(fraction(value), fraction(factor)));
}

function divided(value: number, factor: number): number {
  return toNumber(over(fraction(value), fraction(factor)));
}
