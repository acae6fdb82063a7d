import type { SupplierName } from './parts.ts';

interface DemoSupplier {
  accountNumber: string;
  phone: string;
  email: string;
  address: string;
  note: string;
  leadDays: number;
  /** Thousandths of a day. */
  leadDaysSpread: number;
  /** Minor units. */
  minimumOrder: number;
  carriage: number;
  freeCarriageFrom: number | null;
}

/** Who the invented shop buys from. */
export const DEMO_SUPPLIERS = {
  'Prairie Line Engine Supply': {
    accountNumber: 'PL-20418',
    phone: '(815) 555-0117',
    email: 'orders@prairieline.example',
    address: '410 Depot Street\nRochelle, IL 61068',
    note: 'Orders before ten leave the same day.',
    leadDays: 5,
    leadDaysSpread: 1_500,
    minimumOrder: 2_500,
    carriage: 1_250,
    freeCarriageFrom: 25_000,
  },
  'Calder & Finch Engine Parts': {
    accountNumber: '7731',
    phone: '(414) 555-0162',
    email: 'desk@calderfinch.example',
    address: '88 Foundry Row\nMilwaukee, WI 53204',
    note: '',
    leadDays: 9,
    leadDaysSpread: 3_000,
    minimumOrder: 7_500,
    carriage: 1_590,
    freeCarriageFrom: 40_000,
  },
  'Northbend Two-Stroke': {
    accountNumber: 'MILLB',
    phone: '(319) 555-0140',
    email: 'parts@northbend.example',
    address: '12 River Road\nDubuque, IA 52001',
    note: 'Small firm; ring before you order pistons.',
    leadDays: 12,
    leadDaysSpread: 4_000,
    minimumOrder: 0,
    carriage: 890,
    freeCarriageFrom: null,
  },
  'Ferry Street Wholesale': {
    accountNumber: '55-0093',
    phone: '(312) 555-0177',
    email: 'trade@ferrystreet.example',
    address: '2200 Ferry Street\nChicago, IL 60608',
    note: 'Van on Tuesdays and Fridays.',
    leadDays: 3,
    leadDaysSpread: 1_000,
    minimumOrder: 0,
    carriage: 0,
    freeCarriageFrom: null,
  },
} as const satisfies Record<SupplierName, DemoSupplier>;
