import { clockOff, clockOn } from './clocking.ts';
import { correctHours, enterHours, strikeOutHours } from './corrections.ts';
import { clockedHours, clockedOnJob, runningClocks } from './hours.ts';

export const clock = {
  runningClocks,
  clockedOnJob,
  clockedHours,
  clockOn,
  clockOff,
  enterHours,
  correctHours,
  strikeOutHours,
};
