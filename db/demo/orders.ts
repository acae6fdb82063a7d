import type { PartNumber, SupplierName } from './parts.ts';
import type { StaffKey } from './staff.ts';

interface DemoDelivery {
  /** Days before today, below zero. */
  on: number;
  by: StaffKey;
  note: string;
  /** Minor units. */
  carriage: number;
  lines: readonly { number: PartNumber; came: number /** When not as ordered. */; cost?: number }[];
}

/** An order for the shelves, and what came of it. */
export interface DemoOrder {
  on: number;
  supplier: SupplierName;
  note: string;
  lines: readonly { number: PartNumber; count: number }[];
  deliveries: readonly DemoDelivery[];
  /** What was still to come then was waited for no longer. */
  givenUp?: { on: number; why: string };
}

export const DEMO_ORDERS: readonly DemoOrder[] = [
  {
    on: -88,
    supplier: 'Ferry Street Wholesale',
    note: '',
    lines: [
      { number: 'GN-1066', count: 20 },
      { number: 'GN-1042', count: 20 },
    ],
    deliveries: [
      {
        on: -84,
        by: 'odile',
        note: 'FS 88120',
        carriage: 0,
        lines: [
          { number: 'GN-1066', came: 20 },
          { number: 'GN-1042', came: 20, cost: 55 },
        ],
      },
    ],
  },
  {
    on: -47,
    supplier: 'Calder & Finch Engine Parts',
    note: 'The head gaskets first, please, if you have to split it.',
    lines: [
      { number: 'VK-680-4', count: 4 },
      { number: 'VK-680-12', count: 6 },
      { number: 'VK-680-14', count: 1 },
    ],
    deliveries: [
      {
        on: -37,
        by: 'wren',
        note: 'CF 40771',
        carriage: 1_590,
        lines: [
          { number: 'VK-680-4', came: 4, cost: 720 },
          { number: 'VK-680-12', came: 4 },
        ],
      },
      {
        on: -29,
        by: 'wren',
        note: 'CF 40902',
        carriage: 0,
        lines: [{ number: 'VK-680-12', came: 2 }],
      },
    ],
    givenUp: { on: -22, why: 'They make the starter no more' },
  },
  {
    on: -11,
    supplier: 'Prairie Line Engine Supply',
    note: '',
    lines: [
      { number: 'BV-190-2050', count: 2 },
      { number: 'OS-172-011', count: 2 },
    ],
    deliveries: [
      {
        on: -5,
        by: 'odile',
        note: 'PL 9-3381',
        carriage: 1_250,
        lines: [{ number: 'OS-172-011', came: 2, cost: 2_610 }],
      },
    ],
  },
  {
    on: -2,
    supplier: 'Northbend Two-Stroke',
    note: '',
    lines: [{ number: 'PB62-05', count: 2 }],
    deliveries: [],
  },
];

/** An old part that came in, and what became of it. */
export const DEMO_OLD_PARTS = {
  part: 'OS-172-100',
  count: 3,
  takenIn: { on: -41, by: 'odile' },
  sentBack: { on: -26, count: 2 },
  credited: { on: -9, count: 1, amount: 1_150, note: 'Credit note PL 4417' },
} as const;
