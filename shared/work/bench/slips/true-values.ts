import type { Feature } from '../../features.ts';
import { type Family, HABITS, type Habits } from './feature-habits.ts';
import {
  type Density,
  even,
  evenByFactor,
  factorPeak,
  factorTail,
  mixed,
  peak,
  plateau,
  risingTo,
  tail,
} from './spreads.ts';

/** How the true values of one feature of one engine are spread, before anything is read. */

export interface Expected {
  readonly feature: Feature;
  /** Limits, base unit; null where the book has none. */
  readonly low: number | null;
  readonly high: number | null;
  readonly wearLimit: number | null;
  /** Readings beside it, base unit. */
  readonly others: readonly number[];
}

export interface TrueValues {
  readonly density: Density;
  readonly habits: Habits;
  readonly micrometer: boolean;
  /** What a gauge that shows deviations is set to, base unit; empty where none is used or nothing is known. */
  readonly deviationFrom: readonly number[];
}

/** What any value is given, so that an odd one is odd and not impossible. */
const ODD = 2e-5;
/** Below this a reading beside it is nothing, and says nothing of the size of another; base unit. */
const SMALLEST = 1e-6;
/** How much the readings beside it say, where there are any; the rest is said by the band. */
const BESIDE_SHARE: Record<Family, number> = {
  diameter: 0.85,
  gap: 0.7,
  flatness: 0.6,
  size: 0.75,
  torque: 0.85,
  pressure: 0.65,
  resistance: 0.85,
  speed: 0.8,
};
/** How far readings of one thing lie apart: a share of the size, or a factor's logarithm. */
const BESIDE_REACH: Record<Family, number> = {
  diameter: 0.0005,
  gap: 0.25,
  flatness: 0.5,
  size: 0.02,
  torque: 0.04,
  pressure: 0.15,
  resistance: 0.05,
  speed: 0.05,
};

export function trueValuesOf(expected: Expected, cell: number): TrueValues {
  const habits = HABITS[expected.feature];
  const band = bothLimits(expected, habits);
  const alone =
    band === null ? anySmallEngine(habits) : aroundBand(habits, band, expected.wearLimit, cell);
  const beside = besideOthers(habits, expected.others, cell);
  const share = BESIDE_SHARE[habits.family];
  const [lowest, highest] = habits.possible;
  const known: Density =
    beside === null
      ? alone
      : mixed([
          [share, beside],
          [1 - share, alone],
        ]);
  return {
    habits,
    micrometer: habits.micrometer ?? false,
    density: (value) => (value < lowest || value > highest ? 0 : known(value)),
    deviationFrom: habits.deviation && band !== null ? settingsOf(band) : [],
  };
}

interface Limits {
  readonly low: number;
  readonly high: number;
}

/** What a bore gauge is set to: the whole size where one bounds the band or lies in it, else the lower limit. */
function settingsOf({ low, high }: Limits): number[] {
  const whole = Math.round((low + high) / 2);
  const dust = 1e-9 * high;
  return [whole >= low - dust && whole <= high + dust ? whole : low];
}

/** How far the unstated limit of a one-sided band lies from the stated one, as a factor. */
const OTHER_LIMIT: Record<Family, number> = {
  diameter: 1.0004,
  gap: 2,
  flatness: 2,
  size: 1.05,
  torque: 1.15,
  pressure: 1.45,
  resistance: 1.25,
  speed: 1.1,
};

function bothLimits({ low, high }: Expected, { family }: Habits): Limits | null {
  if (low !== null && high !== null) return { low, high };
  const factor = OTHER_LIMIT[family];
  if (low !== null && low > SMALLEST) return { low, high: low * factor };
  if (high !== null && high > SMALLEST)
    return { low: family === 'flatness' || family === 'gap' ? 0 : high / factor, high };
  return null;
}

/** Without a band only what small engines have at all is known. */
function anySmallEngine({ possible: [low, high], family }: Habits): Density {
  const byFactor = low > 0 && family !== 'flatness' && family !== 'gap';
  return byFactor ? evenByFactor(low, high) : even(low, high);
}

function besideOthers({ family }: Habits, others: readonly number[], cell: number): Density | null {
  const sorted = others.filter((other) => other > SMALLEST).toSorted((a, b) => a - b);
  const middle = sorted[Math.floor((sorted.length - 1) / 2)];
  if (middle === undefined) return null;
  const reach = BESIDE_REACH[family];
  return family === 'diameter' || family === 'size'
    ? peak(middle, middle * reach + cell)
    : factorPeak(middle, reach + cell / middle);
}

/** Machined sizes of the trade, mm: 0.25 and 0.010 in, and so on. */
const STEPS = [0.25, 0.254, 0.5, 0.508, 0.75, 0.762, 1] as const;
const MACHINED_SHARE = 0.015;

function aroundBand(
  habits: Habits,
  limits: Limits,
  wearLimit: number | null,
  cell: number,
): Density {
  const { good, worn, other } = habits.shares;
  // No gauge tells values apart that lie within one of its steps.
  const low = limits.low - cell / 2;
  const high = limits.high + cell / 2;
  const width = high - low;
  const soft = width * 0.15;
  const middle = (low + high) / 2;
  const toWear = sideTail(habits, { low, high }, wearLimit);
  const failed = Math.max(0, 1 - good - worn - other);
  const parts: [number, Density][] = [
    [good, plateau(low, high, soft)],
    ...toWear.map(([share, density]): [number, Density] => [share, density]),
    [failed, failedValues(habits, { low: limits.low, high }, middle, width)],
    [ODD, anySmallEngine(habits)],
  ];
  const machined = habits.machined;
  if (machined !== undefined)
    for (const step of STEPS)
      parts.push([
        MACHINED_SHARE / STEPS.length,
        plateau(low + machined * step, high + machined * step, soft),
      ]);
  return mixed(parts);
}

/** Wear beyond the band to the side where the feature wears, and the little that lies on the other. */
function sideTail(
  { family, wears, shares, reach, closes }: Habits,
  { low, high }: Limits,
  wearLimit: number | null,
): [number, Density][] {
  const up = wears === 'up' ? shares.worn : wears === 'down' ? shares.other : sideShare(shares);
  const down = wears === 'down' ? shares.worn : wears === 'up' ? shares.other : sideShare(shares);
  if (family === 'diameter' || family === 'size') {
    const size = (low + high) / 2;
    const usual = Math.max(Math.abs(size) * reach, high - low);
    const stated = wearLimit === null ? 0 : wearLimit > high ? wearLimit - high : low - wearLimit;
    // A limit far off is an allowance or a slip of its own, and says nothing of wear.
    const length = stated > 0 && stated < usual * 20 ? Math.max(usual, stated * 0.6) : usual;
    return [
      [up, tail(high, 1, wears === 'down' ? usual / 2 : length)],
      [down, tail(low, -1, wears === 'up' ? usual / 2 : length)],
    ];
  }
  const stated =
    wearLimit !== null && wearLimit > high && high > 0 ? Math.log(wearLimit / high) : 0;
  const length = Math.max(reach, Math.min(stated, 2) * 0.6);
  if (family === 'pressure')
    return [
      [up, factorTail(high, 1, 0.12)],
      [down, risingTo(low, 1)],
    ];
  const below: Density =
    family === 'gap' && low > 0 ? risingTo(low, closes ?? 2) : factorTail(low, -1, length);
  return [
    [up, factorTail(high, 1, length)],
    ...(low > 0 ? [[down, below] as [number, Density]] : []),
  ];
}

const sideShare = ({ worn, other }: Habits['shares']) => (worn + other) / 2;

/** What is neither good nor worn but broken: seized, collapsed, shorted, dead. */
function failedValues(
  { family, reach }: Habits,
  { low, high }: Limits,
  middle: number,
  width: number,
): Density {
  switch (family) {
    case 'diameter':
      return peak(middle, middle * 0.004 + 0.01);
    case 'size':
      return peak(middle, Math.max(Math.abs(middle) * reach * 3, width));
    case 'gap':
    case 'flatness':
      return factorTail(high, 1, Math.max(1, reach));
    case 'torque':
    case 'speed':
      return risingTo(high * 1.6, 1);
    case 'pressure':
      return even(0, (low > 0 ? low : high) * 0.35);
    case 'resistance':
      return factorPeak(middle, 1.2);
  }
}
