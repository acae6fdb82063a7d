import {
  BASE_UNIT_OF,
  convert,
  dimensionOf,
  display,
  displayNumber,
  type SlipKind,
  type Unit,
  unitLabel,
  type Verdict,
} from '../../../shared/trade/index.ts';

/** A band in base units, as the sheet hands it over. */
export interface SheetBand {
  readonly low: number | null;
  readonly high: number | null;
}

export const hasBand = ({ low, high }: SheetBand): boolean => low !== null || high !== null;

/** A band of base units in words: '0.20–0.40 mm', 'at most 0.05 mm', 'at least 400 kPa'. */
export function bandWords({ low, high }: SheetBand, unit: Unit): string {
  if (low !== null && high !== null)
    return low === high ? display(low, unit) : `${displayNumber(low, unit)}–${display(high, unit)}`;
  if (high !== null) return `at most ${display(high, unit)}`;
  if (low !== null) return `at least ${display(low, unit)}`;
  return 'no limits';
}

/** The limits as the source prints them, in its own unit. */
export function printedLimits(printed: { low: string; high: string; unit: Unit }): string {
  const unit = unitLabel(printed.unit);
  if (printed.low !== '' && printed.high !== '')
    return printed.low === printed.high
      ? `${printed.low} ${unit}`
      : `${printed.low}–${printed.high} ${unit}`;
  if (printed.high !== '') return `at most ${printed.high} ${unit}`;
  if (printed.low !== '') return `at least ${printed.low} ${unit}`;
  return 'no limits';
}

/**
 * A small amount of a base unit, such as an uncertainty or a distance to a limit, with one digit left
 * where the usual decimals would round it to nothing.
 */
export function amountWords(amount: number, unit: Unit): string {
  if (amount !== 0 && Number(displayNumber(amount, unit)) === 0) {
    const small = convert(amount, BASE_UNIT_OF[dimensionOf(unit)], unit).toPrecision(1);
    return `${Number(small)}\u00A0${unitLabel(unit)}`;
  }
  return display(amount, unit);
}

const FIGURES = 2;
/** Less than any gauge tells: what conversions leave behind, base unit. */
const NOTHING = 1e-9;

/**
 * What a gauge is good to, or has to be: with the two figures that an uncertainty has, since its distance
 * from a limit is told apart by the second.
 * @param amount base unit, above zero
 */
export function goodToWords(amount: number, unit: Unit, round: 'near' | 'down' = 'near'): string {
  const value = convert(amount, BASE_UNIT_OF[dimensionOf(unit)], unit);
  const near = Number(value.toPrecision(FIGURES));
  const step = 10 ** (Math.floor(Math.log10(value)) - FIGURES + 1);
  const lower = near > value * (1 + 1e-9) ? Number((near - step).toPrecision(FIGURES)) : near;
  return `${round === 'down' ? lower : near}\u00A0${unitLabel(unit)}`;
}

/** Why a verdict came out as it did. Base units; shown in `unit`. */
export function verdictSentence(
  judged: { value: number; uncertainty: number; verdict: Verdict } & SheetBand,
  unit: Unit,
): string {
  const { value, low, high, uncertainty, verdict } = judged;
  const toLow = low === null ? Number.POSITIVE_INFINITY : value - low;
  const toHigh = high === null ? Number.POSITIVE_INFINITY : high - value;
  const nearer = toLow < toHigh ? 'low' : 'high';
  const distance = Math.min(toLow, toHigh);
  const band = bandWords(judged, unit);
  if (verdict === 'within')
    return distance === 0
      ? `On the ${nearer} limit, which belongs to the band (${band}).`
      : `Inside ${band}, ${amountWords(distance, unit)} from the ${nearer} limit.`;
  if (verdict === 'outside')
    return `${amountWords(-distance, unit)} ${nearer === 'low' ? 'below the low' : 'above the high'} limit (${band}).`;
  const off =
    Math.abs(distance) < NOTHING
      ? 'On'
      : `${goodToWords(Math.abs(distance), unit)} ${distance < 0 ? 'past' : 'from'}`;
  return `${off} the ${nearer} limit, and the gauge is good to ±${goodToWords(uncertainty, unit)}: it can’t tell.`;
}

/** What the slip of the hand probably was, named as a mechanic would. */
export function slipSentence(kind: SlipKind, value: number, likely: number): string {
  if (kind === 'foot-inch')
    return 'A slip of twelve: inch-pounds read as foot-pounds, or the other way round?';
  if (kind === 'inch')
    return 'A slip of 25.4: a figure in inches (or thousandths) read as millimetres, or the other way round?';
  const ratio = Math.abs(likely / value);
  return ratio > 50 || ratio < 1 / 50
    ? 'A slip of a hundred: the decimal point two places off?'
    : 'A slip of ten: the decimal point one place off?';
}
