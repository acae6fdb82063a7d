import type { Gauge, Reading } from '../../shared/contract/bench/index.ts';
import {
  repeated,
  type Settling,
  settle,
  toBase,
  type Unit,
  unitLabel,
} from '../../shared/trade/index.ts';
import { verdictOn } from '../../shared/work/bench/reading-verdict.ts';
import { goodToWords, type SheetBand } from '../common/measure/measure-words.ts';
import { VERDICT_WORDS } from './reading-words.ts';

/** What would settle a reading that is too close to call, in a sentence with its reason. */

const given = ({ low, high }: SheetBand) => ({ low: low ?? undefined, high: high ?? undefined });

/** The gauge's two figures in the base unit. */
const partsOf = ({ resolution, maxError, unit }: Gauge) => ({
  resolution: toBase(resolution, unit),
  maxError: toBase(maxError, unit),
});

function settlingWords(settling: Settling, unit: Unit): string {
  switch (settling.by) {
    case 'nothing':
      return '';
    case 'no-gauge':
      return 'It lies on the limit itself: no gauge tells on which side, treat the part as doubtful.';
    case 'better-gauge':
      return `To settle it: a gauge that is good to ±${goodToWords(settling.needed, unit, 'down')} or better; reading this one again doesn’t help.`;
    case 'more-readings':
      return `To settle it: ${settling.readings} readings in all, since it is their scatter that stands in the way.`;
  }
}

/** What would settle one reading of this gauge; empty when its verdict stands, or without a gauge. */
export function whatSettles(
  value: number,
  band: SheetBand,
  gauge: Gauge | null,
  unit: Unit,
): string {
  if (gauge === null || (band.low === null && band.high === null)) return '';
  return settlingWords(settle({ value, ...given(band), gauge: partsOf(gauge) }), unit);
}

/**
 * What repeated readings say together: their mean with its uncertainty, the verdict on it, and what would
 * settle it when that is too close to call. Empty for fewer than two readings of one gauge.
 */
export function repeatedWords(
  readings: readonly Reading[],
  band: SheetBand,
  gauge: Gauge | null,
  unit: Unit,
): string {
  if (gauge === null || readings.length < 2) return '';
  const { mean, deviation } = repeated(readings.map(({ valueBase }) => valueBase));
  const hasBand = band.low !== null || band.high !== null;
  if (!hasBand) return '';
  const settling = settle({
    value: mean,
    ...given(band),
    gauge: partsOf(gauge),
    repeatability: deviation,
    readings: readings.length,
  });
  const { verdict } = verdictOn(mean, band, settling.uncertainty);
  const factor = toBase(1, unit);
  const words = `Mean of ${readings.length} readings ${Number((mean / factor).toPrecision(6))} ${unitLabel(unit)}, good to ±${goodToWords(settling.uncertainty, unit)} with their scatter: ${VERDICT_WORDS[verdict]}.`;
  return [words, settlingWords(settling, unit)].filter(Boolean).join(' ');
}
