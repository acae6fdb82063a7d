import { crankingPressure } from '../../trade/index.ts';
import type { LeakPath } from './test-run.ts';

/** What a test run's figures mean. A figure alone condemns nothing; it says where to look. */

/**
 * The lowest cylinder shall reach this share of the highest: TM 5-4210-230-14&P-1, addendum 2
 * (150 to 112 psi fails, 150 to 113 psi passes).
 */
export const COMPRESSION_SHARE = 0.75;

export interface CompressionComparison {
  /** kPa, gauge. */
  lowest: number;
  highest: number;
  /** Cylinders counted from 1. */
  lowestCylinder: number;
  highestCylinder: number;
  /** Lowest over highest, 0 to 1. */
  share: number;
  even: boolean;
}

/**
 * Cylinders held against each other; null when fewer than two of them were measured.
 * @param pressures kPa (gauge) by cylinder, null where none was taken
 */
export function compareCompression(
  pressures: readonly (number | null)[],
): CompressionComparison | null {
  const measured = pressures.flatMap((pressure, index) =>
    pressure === null ? [] : [{ pressure, cylinder: index + 1 }],
  );
  const [first, ...others] = measured;
  if (first === undefined || others.length === 0) return null;
  const low = others.reduce((a, b) => (b.pressure < a.pressure ? b : a), first);
  const high = others.reduce((a, b) => (b.pressure > a.pressure ? b : a), first);
  // Two cylinders without any pressure are alike, and say so by their figures.
  const share = high.pressure === 0 ? 1 : low.pressure / high.pressure;
  return {
    lowest: low.pressure,
    highest: high.pressure,
    lowestCylinder: low.cylinder,
    highestCylinder: high.cylinder,
    share,
    even: share >= COMPRESSION_SHARE,
  };
}

/** Per cent up to which a leak is usual in an engine that has run: common practice, no source. */
const USUAL_LEAK = 20;

/** Per cent above which the leak is looked for and mended: common practice, no source. */
const LARGE_LEAK = 40;

const WHERE_TO_LOOK: Record<LeakPath, string> = {
  none: 'The air is heard nowhere: see that the hose and the tester hold, and that the piston stands at top dead centre.',
  intake:
    'Air in the intake: the intake valve does not seat. Check its lash first, then seat and stem.',
  exhaust:
    'Air in the exhaust: the exhaust valve does not seat. Check its lash first, then seat and stem.',
  crankcase:
    'Air at the breather: it passes the rings. Look at ring gaps, bore and piston. Some of it is usual.',
  'head-gasket':
    'Air between head and cylinder: gasket or flatness. Check the head bolts and the deck.',
  plug: 'Air at the spark plug: thread or washer. Mend it and test again before anything else is judged.',
};

/** Up to so many per cent, in words: common practice, no source. Testers differ. */
const GRADES: readonly (readonly [most: number, words: string])[] = [
  [10, 'Good: little is lost.'],
  [USUAL_LEAK, 'Fair: no more than an engine that has run loses.'],
  [30, 'Worn: look for it before more work is put into the engine.'],
  [LARGE_LEAK, 'Bad: it wants mending.'],
  [80, 'Very bad: the engine wants an overhaul where it leaves.'],
];

const grade = (percent: number): string =>
  GRADES.find(([most]) => percent <= most)?.[1] ??
  'Next to nothing is held: a valve stays open, a hole, or the piston is not at top dead centre of the compression stroke.';

export interface LeakJudgement {
  size: 'usual' | 'more-than-usual' | 'large';
  sentence: string;
}

/**
 * How much of the air is lost, and what the place where it leaves says.
 * @param percent 0 to 100 as the tester shows it; testers differ, so compare with the same one only
 */
export function judgeLeak({ percent, path }: { percent: number; path: LeakPath }): LeakJudgement {
  if (!(percent >= 0 && percent <= 100))
    throw new RangeError('A leak-down figure is a share between 0 and 100 per cent.');
  const size =
    percent <= USUAL_LEAK ? 'usual' : percent <= LARGE_LEAK ? 'more-than-usual' : 'large';
  // A small leak with no sound is how a good engine tests.
  const where = size === 'usual' && path === 'none' ? '' : ` ${WHERE_TO_LOOK[path]}`;
  return { size, sentence: `${grade(percent)}${where}` };
}

/**
 * What a gauge might show while cranking, to compare with and no more.
 * @param compressionRatio above 1, at most 30
 * @param altitude metres
 * @returns kPa (gauge)
 * @throws {RangeError} when ratio or altitude make no sense
 */
export const cranking = (compressionRatio: number, altitude: number) => ({
  expected: crankingPressure({ compressionRatio, altitude }),
  sentence:
    'An expectation, not a limit. A compression release lowers the figure, and so do late valves, a weak battery or a shut throttle: a low figure alone condemns nothing.',
});
