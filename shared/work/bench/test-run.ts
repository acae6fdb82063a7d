import type { SpeedFound } from './run-speed.ts';

/** Where the air is heard or felt to leave at a leak-down test. */
export const LEAK_PATHS = [
  'none',
  'intake',
  'exhaust',
  'crankcase',
  'head-gasket',
  'plug',
] as const;
export type LeakPath = (typeof LEAK_PATHS)[number];

export const LEAK_PATH_LABELS: Record<LeakPath, string> = {
  none: 'Nowhere to be heard',
  intake: 'Intake: the intake valve',
  exhaust: 'Exhaust: the exhaust valve',
  crankcase: 'Crankcase breather: the rings',
  'head-gasket': 'Head gasket',
  plug: 'Spark plug thread',
};

export const CHECK_OUTCOMES = ['works', 'fails', 'not-fitted', 'not-tried'] as const;
export type CheckOutcome = (typeof CHECK_OUTCOMES)[number];

/** What a test run showed. Speeds in 1/min, pressure in kPa (gauge), leak-down in per cent. */
export interface TestRunFindings {
  idleSpeed: number | null;
  topSpeed: number | null;
  /** By cylinder, in order; null where it was not measured. */
  compression: (number | null)[];
  leakDown: { percent: number | null; path: LeakPath }[];
  stopSwitch: CheckOutcome;
  interlocks: CheckOutcome;
  governor: CheckOutcome;
  /** No fuel where none may be: tank, tap, hoses, carburetor, cap; null in runs that were not asked for it. */
  fuelTight: CheckOutcome | null;
  /** Of a chainsaw. */
  chainBrake: CheckOutcome | null;
  /** Of a mower: seconds from letting go of the control until the blade stands. */
  bladeStop: number | null;
  /** Why what such a machine may have is not there. */
  notFittedWhy: string;
  /** Charging or generator output as measured; null when there is none. */
  outputVolts: number | null;
  outputAmps: number | null;
  leaks: string;
  note: string;
  /** The gauge that the speeds were read from; null when none was named. */
  tachometer: string | null;
}

type AskedLater = 'tachometer' | 'fuelTight' | 'chainBrake' | 'bladeStop' | 'notFittedWhy';

/** As it is kept: earlier runs were not asked for all of it, and have no verdicts. */
export interface KeptTestRun
  extends Omit<TestRunFindings, AskedLater>,
    Partial<Pick<TestRunFindings, AskedLater>> {
  speeds?: SpeedFound[];
  /** Why it could not be signed off as passed, as it was told then. */
  against?: string[];
}
