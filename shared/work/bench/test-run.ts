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
  /** Charging or generator output as measured; null when there is none. */
  outputVolts: number | null;
  outputAmps: number | null;
  leaks: string;
  note: string;
  /** The gauge that the speeds were read from; null when none was named. */
  tachometer: string | null;
}

/** As it is kept: runs from before speeds were judged name no tachometer and have no verdicts. */
export interface KeptTestRun extends Omit<TestRunFindings, 'tachometer'> {
  tachometer?: string | null;
  speeds?: SpeedFound[];
}
