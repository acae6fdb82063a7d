import type { PartNumber } from './parts.ts';
import type { StaffKey } from './staff.ts';

/** A rack as it was counted: what the movements say, but for some slips. */
export interface DemoStockCount {
  /** Days before today, below zero. */
  on: number;
  by: StaffKey;
  rack: string;
  slips: readonly {
    number: PartNumber;
    /** Whole pieces found, or missed below zero. */
    off: number;
    /** Empty while nobody knows. */
    why: string;
  }[];
}

export const DEMO_STOCK_COUNTS: readonly DemoStockCount[] = [
  {
    on: -61,
    by: 'wren',
    rack: 'A1',
    slips: [
      { number: 'OS-172-090', off: -1, why: 'Went into the shop’s own pump and was not issued' },
      { number: 'OS-172-030', off: 1, why: 'Lay behind the head gaskets when it was counted last' },
    ],
  },
  {
    on: -4,
    by: 'ignacio',
    rack: 'A2',
    slips: [
      { number: 'BV-190-2040', off: 1, why: 'Came in a bag of exhaust valves' },
      { number: 'BV-190-2030', off: -1, why: '' },
    ],
  },
];
