import type { LineKind } from '../vocabulary.ts';
import type { LeakPath } from './test-run.ts';

/** What a diagnosis looks at, in the order in which a mechanic does. */
export const CHECKS = [
  'turning',
  'spark',
  'fuel',
  'air',
  'oil',
  'compression',
  'leak-down',
  'controls',
  'other',
] as const;
export type Check = (typeof CHECKS)[number];

export const CHECK_LABELS: Record<Check, string> = {
  turning: 'Turns by hand',
  spark: 'Spark',
  fuel: 'Fuel',
  air: 'Air',
  oil: 'Oil',
  compression: 'Compression',
  'leak-down': 'Leak-down',
  controls: 'Controls and wiring',
  other: 'What else was seen',
};

/** How it is looked at: common practice, no source. */
export const CHECK_HINTS: Record<Check, string> = {
  turning: 'Plug out, lead earthed: free all the way round, no grinding, no end play to feel.',
  spark:
    'With a spark tester in the open, away from fuel. Then the plug itself: gap, colour, wet or dry. Spark, and it kicks back or does not fire after a blade strike: see whether the flywheel key is sheared.',
  fuel: 'Age and smell, water in it, flow at the carburettor, bowl and jets.',
  air: 'Air filter, choke, leaks between carburettor and cylinder.',
  oil: 'Level and colour; fuel in it, water in it, metal in it.',
  compression:
    'Plug lead earthed, throttle and choke open, a few pulls, the same gauge for every cylinder. A compression release reads low: see how the maker wants it held.',
  'leak-down':
    'Piston at top dead centre of the compression stroke. The crank can turn: hands clear.',
  controls: 'Stop switch, interlocks, governor linkage, charging, chafed wires.',
  other: 'Mounts, muffler, fins, leaks, what somebody did before.',
};

/** Checks that are read from a gauge, one figure for each cylinder, in this unit unless another is typed. */
export const CHECK_UNITS = { compression: 'kPa', 'leak-down': '%' } as const satisfies Partial<
  Record<Check, string>
>;
export type MeasuredCheck = keyof typeof CHECK_UNITS;

export const isMeasuredCheck = (check: Check): check is MeasuredCheck => check in CHECK_UNITS;

export const FOUND = ['sound', 'wants-work', 'not-tried'] as const;
export type Found = (typeof FOUND)[number];

export const FOUND_LABELS: Record<Found, string> = {
  sound: 'Sound',
  'wants-work': 'Wants work',
  'not-tried': 'Could not be tried',
};

/** What a gauge showed at one cylinder: as typed, beside its value in kPa or per cent. */
export interface CheckFigure {
  /** Counted from 1. */
  cylinder: number;
  text: string;
  unit: string;
  base: number;
  /** Where the air was heard to leave; of a leak-down only. */
  path: LeakPath | null;
}

/** One thing that it takes, as it would stand on the estimate. */
export interface WorkWanted {
  kind: Extract<LineKind, 'labour' | 'part' | 'outside'>;
  description: string;
}
