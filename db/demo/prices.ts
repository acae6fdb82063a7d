import type { CustomerTerms, TillRules } from '../../shared/contract/till/index.ts';
import type { DEMO_CUSTOMERS } from './customers.ts';
import type { PartNumber } from './parts.ts';
import { DEMO_SHOP } from './shop.ts';

/** What is done at the bench is this kind of work. */
export const BENCH_WORK = 'Bench work';

/** How the invented shop prices. */
export const DEMO_RULES: Partial<TillRules> = {
  labourRates: [
    { name: BENCH_WORK, rate: DEMO_SHOP.labourRate },
    { name: 'Machining', rate: 10_800 },
    { name: 'Diagnosis', rate: 9_600 },
  ],
  labourCost: 3_900,
  markup: [
    { upTo: 500, markupPpm: 1_200_000 },
    { upTo: 2_500, markupPpm: 800_000 },
    { upTo: null, markupPpm: 600_000 },
  ],
  outsideMarkupPpm: 200_000,
  supplies: { ppm: 40_000, kinds: ['labour', 'part'], cap: 1_800 },
  storage: { afterDays: 30, perDay: 150, cap: 9_000 },
};

/** Parts for which an old one comes back, and what is charged until it does. */
export const DEMO_CORES: readonly { part: PartNumber; charge: number }[] = [
  { part: 'OS-172-100', charge: 1_200 },
];

interface DemoBundle {
  name: string;
  note: string;
  labour: { what: string; hours: number; workKind: string }[];
  parts: { number: PartNumber; count: number }[];
}

export const DEMO_BUNDLES: readonly DemoBundle[] = [
  {
    name: 'Valve job, single cylinder',
    note: 'Without guides; measure stems and seats first.',
    labour: [
      { what: 'Head off and on, valve lash set cold', hours: 1.2, workKind: 'Bench work' },
      { what: 'Seats cut, valves lapped, springs checked', hours: 1.4, workKind: 'Machining' },
    ],
    parts: [{ number: 'OS-172-031', count: 1 }],
  },
  {
    name: 'Fuel system cleaned',
    note: 'Fuel drained outdoors, away from flame.',
    labour: [{ what: 'Tank, lines and carburettor cleaned', hours: 1, workKind: 'Bench work' }],
    parts: [{ number: 'OS-172-071', count: 1 }],
  },
];

/** Who is not taxed and does not pay as everybody does. */
export const DEMO_TERMS: Partial<
  Record<keyof typeof DEMO_CUSTOMERS, Partial<CustomerTerms> & { exemptForDays?: number }>
> = {
  orchard: { onAccount: true, termsDays: 30, creditLimit: 250_000 },
  brigade: { exemptCertificate: 'E-9920-118', exemptForDays: 200 },
};
