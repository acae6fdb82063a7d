/** The states of a job, in the order in which a rebuild usually passes through them. */
export const JOB_STATES = [
  'taken-in',
  'diagnosis',
  'customer-to-decide',
  'go-ahead',
  'waits-for-parts',
  'on-the-bench',
  'ready',
  'handed-over',
  'stopped',
] as const;

export type JobState = (typeof JOB_STATES)[number];

export const JOB_STATE_LABELS: Record<JobState, string> = {
  'taken-in': 'Taken in',
  diagnosis: 'Diagnosis',
  'customer-to-decide': 'Customer to decide',
  'go-ahead': 'Go-ahead given',
  'waits-for-parts': 'Waits for parts',
  'on-the-bench': 'On the bench',
  ready: 'Ready to collect',
  'handed-over': 'Handed over',
  stopped: 'Stopped',
};

/** Whose move it is. */
export const WAITS_ON = ['bench', 'customer', 'supplier', 'nobody'] as const;
export type WaitsOn = (typeof WAITS_ON)[number];

export const WAITS_ON_LABELS: Record<WaitsOn, string> = {
  bench: 'The bench',
  customer: 'The customer',
  supplier: 'A supplier',
  nobody: 'Nobody',
};

const WAITS: Record<JobState, WaitsOn> = {
  'taken-in': 'bench',
  diagnosis: 'bench',
  'customer-to-decide': 'customer',
  'go-ahead': 'bench',
  'waits-for-parts': 'supplier',
  'on-the-bench': 'bench',
  ready: 'customer',
  'handed-over': 'nobody',
  stopped: 'customer',
};

/** Whose move it is in a state. */
export const waitsOn = (state: JobState): WaitsOn => WAITS[state];

const NEXT: Record<JobState, readonly JobState[]> = {
  'taken-in': ['diagnosis', 'customer-to-decide', 'go-ahead', 'stopped'],
  diagnosis: ['customer-to-decide', 'go-ahead', 'stopped'],
  'customer-to-decide': ['diagnosis', 'go-ahead', 'stopped'],
  'go-ahead': ['waits-for-parts', 'on-the-bench', 'customer-to-decide', 'stopped'],
  'waits-for-parts': ['go-ahead', 'on-the-bench', 'customer-to-decide', 'stopped'],
  'on-the-bench': ['waits-for-parts', 'ready', 'customer-to-decide', 'stopped'],
  ready: ['on-the-bench', 'handed-over'],
  'handed-over': [],
  stopped: ['diagnosis', 'handed-over'],
};

/** The states that a job may go to from `state`. */
export const nextStates = (state: JobState): readonly JobState[] => NEXT[state];

/** Whether a job may go from one state to another; staying is not a move. */
export const canMove = (from: JobState, to: JobState): boolean => NEXT[from].includes(to);

export const NO_LONGER_OWED: readonly JobState[] = ['ready', 'handed-over', 'stopped'];

/** Whether the promised day still binds: a machine that is ready or stopped waits to be fetched. */
export const isOwed = (state: JobState): boolean => !NO_LONGER_OWED.includes(state);

/** Moves that are made by their own action and not by choosing a state. */
export const MOVES_BY_ACTION: readonly JobState[] = ['go-ahead', 'handed-over'];
