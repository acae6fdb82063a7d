import type { StaffKey } from './staff.ts';

/** How the drawer was counted at the end of a day. */
export interface DemoCount {
  /** Days before today, below zero. */
  on: number;
  by: StaffKey;
  /** Counted less expected, cents. */
  off: number;
  note: string;
}

/** In the drawer each morning, cents; what is above it goes to the bank in the evening. */
export const DEMO_FLOAT = 15_000;

export const DEMO_COUNTS: readonly DemoCount[] = [
  { on: -12, by: 'ruth', off: 0, note: '' },
  { on: -9, by: 'ruth', off: 0, note: '' },
  {
    on: -7,
    by: 'ruth',
    off: -200,
    note: 'Two dollars short; a roll of quarters was opened in a hurry',
  },
  { on: -6, by: 'ruth', off: 0, note: '' },
  { on: -5, by: 'ruth', off: 0, note: '' },
  { on: -2, by: 'ruth', off: 35, note: 'Somebody would not take the change' },
  { on: -1, by: 'ruth', off: 0, note: '' },
];
