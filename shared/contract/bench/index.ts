import { build } from './build.ts';
import { clearanceSheet } from './clearance-sheet.ts';
import { decisions } from './decisions.ts';
import { diagnosis } from './diagnosis.ts';
import { gauges } from './gauges.ts';
import { history } from './history.ts';
import { holdPoints } from './hold-points.ts';
import { photos } from './photos.ts';
import { readings } from './readings.ts';
import { sheet } from './sheet.ts';
import { testRun } from './test-run.ts';
import { torque } from './torque.ts';

export * from './build.ts';
export * from './common.ts';
export * from './decisions.ts';
export * from './diagnosis.ts';
export * from './gauges.ts';
export * from './history.ts';
export * from './hold-points.ts';
export * from './photos.ts';
export * from './readings.ts';
export * from './sheet.ts';
export * from './test-run.ts';
export * from './torque.ts';

/** The bench: readings with unit, gauge and verdict; hold points; gauges. */
export const bench = {
  ...build,
  ...torque,
  ...photos,
  ...sheet,
  ...readings,
  ...holdPoints,
  ...diagnosis,
  ...decisions,
  ...gauges,
  ...testRun,
  ...history,
  ...clearanceSheet,
};
