/** What kind of work a job is, and what of the machine is touched by it: its steps follow from both. */

const WORK_KINDS = ['rebuild', 'repair', 'service'] as const;
export type WorkKind = (typeof WORK_KINDS)[number];

/** What of a machine can be opened or taken off by itself. */
const WORK_AREAS = [
  'crankcase',
  'cylinder',
  'head',
  'ignition',
  'fuel',
  'starter',
  'wiring',
  'governor',
  'cutting',
  'service',
] as const;
export type WorkArea = (typeof WORK_AREAS)[number];
