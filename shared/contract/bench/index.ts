import { clearanceSheet } from './clearance-sheet.ts';
import { gauges } from './gauges.ts';
import { history } from './history.ts';
import { holdPoints } from './hold-points.ts';
import { readings } from './readings.ts';
import { sheet } from './sheet.ts';
import { testRun } from './test-run.ts';

export * from './common.ts';
export * from './gauges.ts';
export * from './history.ts';
export * from './hold-points.ts';
export * from './readings.ts';
export * from './sheet.ts';
export * from './test-run.ts';

/** The bench: readings with unit, gauge and verdict; hold points; gauges. */
export const bench = {
  ...sheet,
  ...readings,
  ...holdPoints,
  ...gauges,
  ...clearanceSheet,
  ...history,
  ...testRun,
};
