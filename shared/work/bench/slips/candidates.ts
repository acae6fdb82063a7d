import {
  BASE_UNIT_OF,
  convert,
  dimensionOf,
  type Reading,
  type Unit,
  unitsOf,
} from '../../../trade/index.ts';
import { SLIP_FREQUENCIES, UNIT_MIXED_UP } from './frequencies.ts';
import type { TrueValues } from './true-values.ts';
import { type TypedNumber, typedNumber, valueOfDigits } from './typed-number.ts';

/** How a right reading was written wrong. */
export const READING_SLIP_KINDS = [
  'decimal',
  'unit',
  'transposed',
  'dropped',
  'doubled',
  'sleeve',
  'frame',
  'deviation',
  'unexplained',
] as const;
/**
 * `decimal`: the point some places off or left out. `unit`: the figure of another unit. `transposed`,
 * `dropped`, `doubled`: digits. `sleeve`: a micrometer's sleeve read half a turn off. `frame`: the frame of
 * another size. `deviation`: only what a bore gauge shows beside its setting. `unexplained`: no such reading
 * exists, and none of these leads to one.
 */
export type ReadingSlipKind = (typeof READING_SLIP_KINDS)[number];

/** One way in which the typed figure can have come of a right one. */
export interface Candidate {
  readonly kind: ReadingSlipKind;
  readonly likely: number;
  readonly unit: Unit;
  /** How often this very slip is made, per reading. */
  readonly frequency: number;
}

interface Typed {
  readonly reading: Reading;
  /** Whether a unit was typed with the number. */
  readonly unitTyped: boolean;
  /** Of the gauge, in the unit of the reading; null when no gauge is known. */
  readonly resolution: number | null;
}

/** Every slip that may be behind a reading, each with the value it would have come of. */
export function candidatesFor(typed: Typed, values: TrueValues): Candidate[] {
  const number = typedNumber(typed.reading.text);
  return [
    ...unitsMixedUp(typed),
    ...(values.micrometer ? misreadMicrometer(typed) : []),
    ...deviations(typed, values),
    ...(number === null
      ? []
      : [
          ...shiftedPoints(typed, number),
          ...transposed(typed, number),
          ...dropped(typed, number),
          ...doubled(typed, number),
        ]),
  ].filter(({ likely, unit }) => likely !== typed.reading.value || unit !== typed.reading.unit);
}

const PLACES = [1, 2, 3, 4] as const;
const LOOKS_LIKE_THOUSANDS = /^\d{1,3}[.,]\d{3}$/;

function shiftedPoints({ reading }: Typed, number: TypedNumber): Candidate[] {
  if (reading.value === 0) return [];
  const { decimal, pointLeftOut, thousands } = SLIP_FREQUENCIES;
  const thousandsTyped = LOOKS_LIKE_THOUSANDS.test(reading.text.trim());
  return PLACES.flatMap((places) => [
    {
      kind: 'decimal' as const,
      likely: valueOfDigits({ ...number, decimals: number.decimals + places }),
      unit: reading.unit,
      // Without a point in it, the whole point may have been left out.
      frequency: number.separator === '' ? pointLeftOut[places] : decimal[places],
    },
    {
      kind: 'decimal' as const,
      likely: scaledUp(number, places),
      unit: reading.unit,
      frequency: places === 3 && thousandsTyped ? thousands : decimal[places],
    },
  ]);
}

function scaledUp(number: TypedNumber, places: number): number {
  const missing = Math.max(0, places - number.decimals);
  return valueOfDigits({
    ...number,
    digits: number.digits + '0'.repeat(missing),
    decimals: Math.max(0, number.decimals - places),
  });
}

function unitsMixedUp({ reading, unitTyped }: Typed): Candidate[] {
  const share = unitTyped ? SLIP_FREQUENCIES.unitAlthoughTyped : SLIP_FREQUENCIES.unit;
  return unitsOf(dimensionOf(reading.unit)).flatMap((unit) => {
    const weight = UNIT_MIXED_UP[unit] ?? 0;
    return unit === reading.unit || weight === 0
      ? []
      : [{ kind: 'unit' as const, likely: reading.value, unit, frequency: share * weight }];
  });
}

function transposed({ reading }: Typed, number: TypedNumber): Candidate[] {
  const pairs = Array.from({ length: number.digits.length - 1 }, (_, at) => at);
  return pairs.flatMap((at) => {
    const [first = '', second = ''] = number.digits.slice(at, at + 2);
    if (first === second) return [];
    const digits = number.digits.slice(0, at) + second + first + number.digits.slice(at + 2);
    return [
      {
        kind: 'transposed' as const,
        likely: valueOfDigits({ ...number, digits }),
        unit: reading.unit,
        frequency: SLIP_FREQUENCIES.transposed / pairs.length,
      },
    ];
  });
}

const FIGURES = [...'0123456789'];

/** A digit that was not struck: put back before each of those that were, and behind the last. */
function dropped({ reading }: Typed, number: TypedNumber): Candidate[] {
  const { length } = number.digits;
  const point = length - number.decimals;
  // At the point itself a digit may have stood before it or behind it.
  const spots = Array.from({ length: length + 1 }, (_, at) => at).flatMap((at) => [
    ...(at <= point ? [{ at, behind: false }] : []),
    ...(at >= point && number.separator !== '' ? [{ at, behind: true }] : []),
  ]);
  return spots.flatMap(({ at, behind }) =>
    FIGURES.filter((figure) => at > 0 || behind || figure !== '0').map((figure) => ({
      kind: 'dropped' as const,
      likely: valueOfDigits({
        negative: number.negative,
        digits: number.digits.slice(0, at) + figure + number.digits.slice(at),
        decimals: number.decimals + (behind ? 1 : 0),
      }),
      unit: reading.unit,
      frequency:
        at === 0 && !behind
          ? SLIP_FREQUENCIES.leadingDropped / (FIGURES.length - 1)
          : SLIP_FREQUENCIES.dropped / length / FIGURES.length,
    })),
  );
}

function doubled({ reading }: Typed, number: TypedNumber): Candidate[] {
  const length = number.digits.length;
  const pairs = Array.from({ length: length - 1 }, (_, at) => at).filter(
    (at) => number.digits[at] === number.digits[at + 1],
  );
  return pairs.map((at) => ({
    kind: 'doubled' as const,
    likely: valueOfDigits({
      negative: number.negative,
      digits: number.digits.slice(0, at) + number.digits.slice(at + 1),
      decimals: number.decimals - (at + 1 >= length - number.decimals ? 1 : 0),
    }),
    unit: reading.unit,
    frequency: SLIP_FREQUENCIES.doubled / Math.max(1, length - 1),
  }));
}

/** One turn of the thimble is 0.5 mm on a metric micrometer and 0.025 in on an inch one. */
const TURN = { mm: 0.5, in: 0.025 } as const;
/** Frames come in steps of 25 mm and of 1 in. */
const FRAME = { mm: 25, in: 1 } as const;

function misreadMicrometer({ reading, resolution }: Typed): Candidate[] {
  const { unit, value } = reading;
  if (unit !== 'mm' && unit !== 'in') return [];
  // What reads coarser than this is a caliper, which has neither sleeve nor frame.
  const finest = unit === 'mm' ? 0.01 : 0.001;
  if (resolution !== null && resolution > finest * 1.001) return [];
  const off = (kind: 'sleeve' | 'frame', by: number, frequency: number): Candidate[] =>
    [by, -by].map((step) => ({
      kind,
      likely: Number((value + step).toFixed(6)),
      unit,
      frequency: frequency / 2,
    }));
  return [
    ...off('sleeve', TURN[unit], SLIP_FREQUENCIES.sleeve),
    ...off('frame', FRAME[unit], SLIP_FREQUENCIES.frame),
  ];
}

function deviations({ reading }: Typed, { deviationFrom }: TrueValues): Candidate[] {
  const base = BASE_UNIT_OF[dimensionOf(reading.unit)];
  return deviationFrom.map((setting) => ({
    kind: 'deviation',
    likely: Number((convert(setting, base, reading.unit) + reading.value).toPrecision(9)),
    unit: reading.unit,
    frequency: SLIP_FREQUENCIES.deviation / deviationFrom.length,
  }));
}
