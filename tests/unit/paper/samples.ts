import type {
  ClaimTicket,
  ClearanceSheet,
  CreditNote,
  DecisionLine,
  DerivedLine,
  Estimate,
  FeatureReadings,
  FindingLine,
  Invoice,
  PaperHead,
  PaperLine,
  PhotoLine,
  ReadingLine,
  Receipt,
  Signature,
  Tag,
  Totals,
  WorkOrder,
} from '../../../electron/paper/content.ts';
import { jobCode } from '../../../shared/contract/ids.ts';

/** Invented: shop, people, makers, models, part numbers, prices and specifications. */
export const head = {
  number: 'W-000042',
  issuedAt: '2026-03-27T15:42:00Z',
  issuedBy: 'Ines Ferro',
  shop: {
    name: 'Lindholt & Ferro Engine Works',
    addressLines: ['8 Kiln Lane', 'Harrowmere'],
    phone: '+1 555 0142',
    email: 'bench@lindholt-ferro.example',
    taxNumber: '77-0184420',
    paperSize: 'A4',
    locale: 'en-US',
    timeZone: 'America/Chicago',
    currency: 'USD',
  },
  job: { number: 42, code: jobCode(42), takenInOn: '2026-03-14', promisedFor: '2026-03-28' },
  customer: {
    name: 'Łucja Żółkiewska',
    phone: '+1 555 0177',
    email: 'lucja@zolkiewska.example',
    addressLines: ['Mill Cottage', '31 Weir Road', 'Harrowmere'],
  },
  machine: {
    kind: 'Rear-tine tiller',
    make: 'Grindal',
    model: 'Furrowline 65',
    serial: 'GF65-118204',
    engineMake: 'Torvane',
    engineModel: 'TV 212',
    engineTypeCode: '212-04 B',
    engineSerial: 'T2190331',
    engineDateCode: '190331',
  },
} satisfies PaperHead;

const cautions = [
  'Take the ignition lead off and earth it before turning the engine by hand or reaching near the tines.',
  'Drain fuel outdoors, away from flame and sparks. Run the engine only where the exhaust goes outside: carbon monoxide kills.',
  'Tines, belts and hot surfaces injure. Keep guards fitted and wait until everything stands still and is cool.',
  'Used oil, solvents and batteries go where local rules say.',
];

const terms = [
  'A diagnosis fee is due whether or not the work goes ahead; it is taken off the bill if it does.',
  'Nothing is done beyond the spending limit without another approval.',
  'Machines that are ready wait 30 days without charge.',
];

export function signature(name: string, seed: number): Signature {
  const strokes = [0, 1, 2].map((part) =>
    Array.from({ length: 40 }, (_, step) => {
      const t = step / 39;
      return {
        x: 20 + part * 90 + t * 110,
        y: 60 + 34 * Math.sin(seed + part * 2 + t * 9) * (1 - t * 0.5),
      };
    }),
  );
  return {
    name,
    signedAt: '2026-03-27T15:41:00Z',
    typedBy: null,
    strokes: [...strokes, [{ x: 300, y: 20 }]],
    width: 340,
    height: 120,
  };
}

export const claimTicket = {
  ...head,
  kind: 'claim-ticket',
  number: 'C-000042',
  complaint:
    'Starts, runs for ten minutes and dies. Blue smoke since last autumn. Lost power on the upper field.',
  symptoms: ['hard to pull over when warm', 'oil at the breather', 'plug fouled'],
  condition: 'Left tine shield bent, belt cover screws missing, otherwise complete.',
  leftWith: ['key', 'depth stake', 'spare belt'],
  fuel: 'half a tank, about six months old',
  lastService: 'oil in spring 2024, by the owner',
  reachBy: 'telephone after four, or text',
  diagnosisFee: 4500,
  spendingLimit: 15000,
  deposit: 10000,
  terms,
  cautions,
  signature: signature('Łucja Żółkiewska', 1),
} satisfies ClaimTicket;

export const tag = {
  ...head,
  kind: 'tag',
  number: 'T-000042',
  complaint: claimTicket.complaint,
  leftWith: claimTicket.leftWith,
  cautions: ['Ignition lead off before turning the engine. Fuel in the tank.'],
} satisfies Tag;

const line = (
  kind: PaperLine['kind'],
  description: string,
  partNumber: string,
  quantity: string,
  unit: string,
  unitPrice: number,
  amount: number,
) => ({ kind, description, partNumber, quantity, unit, unitPrice, amount }) satisfies PaperLine;

export const lines: PaperLine[] = [
  line('labour', 'Strip, measure and rebuild engine', '', '5.5', 'h', 7200, 39600),
  line('outside', 'Bore cylinder to 0.25 mm oversize and hone', '', '1', 'pc', 8500, 8500),
  line('part', 'Piston with pin and clips, 0.25 mm oversize', 'TV-3310-25', '1', 'pc', 5840, 5840),
  line('part', 'Ring set, 0.25 mm oversize', 'TV-3312-25', '1', 'set', 3125, 3125),
  line('part', 'Gasket set, complete', 'TV-1900', '1', 'set', 2890, 2890),
  line('supplies', 'Cleaning and sealing supplies', '', '1', 'job', 900, 900),
];

export const totals = {
  subtotal: 60855,
  taxes: [{ name: 'Sales tax', rate: '6.25 %', base: 12755, amount: 797 }],
  total: 61652,
  rounding: 'Tax is rounded to the last digit shown, a half up, on the whole bill.',
} satisfies Totals;

const findings: FindingLine[] = [
  {
    check: 'Spark',
    outcome: 'sound',
    found: 'Sound',
    seen: '',
    by: 'Tomas Lindholt',
    at: '2026-03-15T14:05:00Z',
  },
  {
    check: 'Leak-down',
    outcome: 'wants-work',
    found: 'Wants work',
    seen: '38 %, crankcase breather: the rings\nHeard at the breather, nowhere else',
    by: 'Tomas Lindholt',
    at: '2026-03-15T14:25:00Z',
  },
  {
    check: 'Controls and wiring',
    outcome: 'not-tried',
    found: 'Could not be tried',
    seen: 'No battery with it',
    by: 'Tomas Lindholt',
    at: '2026-03-15T14:30:00Z',
  },
];

export const estimate = {
  ...head,
  kind: 'estimate',
  number: 'E-000042-2',
  revision: 2,
  validUntil: '2026-04-17',
  findings,
  options: [{ label: '', lines, totals }],
  declined: [],
  note: 'Replaces revision 1: the bore is worn past its limit, so the cylinder is bored to the first oversize.',
  terms,
} satisfies Estimate;

const repairTotals = {
  ...totals,
  subtotal: 3790,
  taxes: [{ name: 'Sales tax', rate: '6.25 %', base: 3790, amount: 237 }],
  total: 4027,
} satisfies Totals;

/** Three ways to do it, of which the customer takes one. */
export const optionsSideBySide = {
  ...estimate,
  options: [
    { label: 'Repair', lines: lines.slice(4), totals: repairTotals },
    { label: 'Rebuild', lines, totals },
    {
      label: 'Replace the engine',
      lines: [line('part', 'Short engine, complete', 'TV-9000', '1', 'pc', 78000, 78000)],
      totals: {
        ...totals,
        subtotal: 78000,
        taxes: [{ name: 'Sales tax', rate: '6.25 %', base: 78000, amount: 4875 }],
        total: 82875,
      },
    },
  ],
  declined: [{ description: 'New recoil rope', amount: 1500 }],
} satisfies Estimate;

const approvals = [
  {
    by: 'Łucja Żółkiewska',
    how: 'in person',
    at: '2026-03-14T14:20:00Z',
    takenBy: 'Ines Ferro',
    amount: 15000,
    paperNumber: 'E-000042-1',
    note: '',
  },
  {
    by: 'Łucja Żółkiewska',
    how: 'telephone',
    at: '2026-03-18T21:05:00Z',
    takenBy: 'Tomas Lindholt',
    amount: 62000,
    paperNumber: 'E-000042-2',
    note: '',
  },
];

const payments = [
  { at: '2026-03-14T14:25:00Z', what: 'Deposit', method: 'card', amount: 10000 },
  { at: '2026-03-27T15:38:00Z', what: 'Balance', method: 'card', amount: 51652 },
];

export const invoice = {
  ...head,
  kind: 'invoice',
  number: 'I-000137',
  sort: 'work',
  warranty: null,
  lines,
  totals,
  approvals,
  differences: [],
  declined: [],
  payments,
  due: 0,
  dueOn: null,
  note: '',
  terms: ['Warranty and care: see the work order W-000042.'],
} satisfies Invoice;

/** Billed otherwise than it was approved. */
export const differingInvoice = {
  ...invoice,
  differences: [
    { description: 'Strip, measure and rebuild engine', approved: 36000, billed: 39600 },
    { description: 'Governor spring', approved: 640, billed: null },
    { description: 'Cleaning and sealing supplies', approved: null, billed: 900 },
  ],
  declined: [{ description: 'Grind the valve seats', amount: 7600 }],
} satisfies Invoice;

export const creditNote = {
  ...head,
  kind: 'credit-note',
  number: 'N-000009',
  corrects: { number: 'I-000137', fingerprint: 'c0ffee'.repeat(10) },
  lines: lines.slice(4, 5),
  totals: {
    ...totals,
    subtotal: 2890,
    taxes: [{ name: 'Sales tax', rate: '6.25 %', base: 2890, amount: 181 }],
    total: 3071,
  },
  reason: 'The gasket set was not used: the old one was whole.',
  offOpen: 1000,
  freed: 2071,
  terms: [],
} satisfies CreditNote;

export const receipt = {
  ...head,
  kind: 'receipt',
  number: 'R-000212',
  what: 'Payment',
  back: false,
  method: 'Cash',
  reference: '',
  amount: 53000,
  given: 60000,
  change: 7000,
  uses: [
    { job: head.job.code, what: 'Invoice I-000137', amount: 51652, open: 0 },
    { job: head.job.code, what: 'Kept as the customer’s credit', amount: 1348, open: null },
  ],
} satisfies Receipt;

const reading = (
  phase: string,
  place: string,
  asTyped: string,
  converted: string,
  band: string,
  verdict: ReadingLine['verdict'],
  extra: Partial<ReadingLine> = {},
): ReadingLine => ({
  phase,
  place,
  asTyped,
  converted,
  band,
  gauge: 'Bore gauge BG-2',
  uncertainty: '±0.006 mm',
  verdict,
  remark: '',
  by: 'Tomas Lindholt',
  at: '2026-03-17T16:12:00Z',
  ...extra,
});

const derived = (phase: string, name: string, value: string): DerivedLine => ({
  phase,
  name,
  value,
  uncertainty: '±0.008 mm',
  band: '',
  verdict: 'no-band',
  remark: '',
  source: '',
  standing: 'none',
});

const manual = 'Torvane TV 212 workshop manual, 3rd edition, page 14';
const feeler = { gauge: 'Feeler set FS-1', uncertainty: '±0.010 mm', at: '2026-03-25T19:30:00Z' };
const wrench = {
  gauge: 'Torque wrench TW-1',
  uncertainty: '±0.7 lbf·ft',
  at: '2026-03-25T18:05:00Z',
};

const bore = (
  place: string,
  asTyped: string,
  converted: string,
  verdict: ReadingLine['verdict'],
): ReadingLine => reading('as received', place, asTyped, converted, '70.000 to 70.025 mm', verdict);

export const features: FeatureReadings[] = [
  {
    feature: 'Cylinder bore',
    source: manual,
    standing: 'confirmed',
    fastener: '',
    conflicts: [],
    readings: [
      bore('top, along the crank', '70.030 mm', '2.7571 in', 'too-close'),
      bore('top, across the crank', '70.068 mm', '2.7586 in', 'outside'),
      bore('middle, along the crank', '70.024 mm', '2.7569 in', 'too-close'),
      bore('middle, across the crank', '70.047 mm', '2.7578 in', 'outside'),
      bore('bottom, along the crank', '70.012 mm', '2.7564 in', 'within'),
      bore('bottom, across the crank', '70.018 mm', '2.7566 in', 'within'),
    ],
    derived: [
      derived('as received', 'taper', '0.050 mm'),
      derived('as received', 'out-of-round', '0.037 mm'),
      derived('as received', 'wear', '0.068 mm'),
      derived('as received', 'next oversize', '0.25 mm'),
    ],
  },
  {
    feature: 'Ring end gap',
    source: 'Ring maker’s leaflet in the box, 2025',
    standing: 'single-source',
    fastener: '',
    conflicts: [],
    readings: [
      reading('build', 'top ring', '0.28 mm', '0.0110 in', '0.20 to 0.40 mm', 'within', feeler),
      reading('build', 'second ring', '0.31 mm', '0.0122 in', '0.20 to 0.40 mm', 'within', feeler),
    ],
    derived: [],
  },
  {
    feature: 'Ignition air gap',
    source: manual,
    standing: 'confirmed',
    fastener: '',
    conflicts: [],
    readings: [
      reading('build', 'leg 1', '0.3 mm', '0.012 in', '0.2 to 0.4 mm, aim 0.3', 'within', feeler),
      reading('build', 'leg 2', '0.03 mm', '0.0012 in', '0.2 to 0.4 mm, aim 0.3', 'outside', {
        ...feeler,
        remark: 'Questioned (0.3 mm?), kept as typed; set again below.',
      }),
      reading(
        'build',
        'leg 2, set again',
        '0.3 mm',
        '0.012 in',
        '0.2 to 0.4 mm, aim 0.3',
        'within',
        feeler,
      ),
    ],
    derived: [],
  },
  {
    feature: 'Valve lash, cold',
    source: 'Copied from a page on the web without an edition',
    standing: 'unconfirmed',
    fastener: '',
    conflicts: [],
    readings: [
      reading('build', 'intake', '.006"', '0.15 mm', '0.13 to 0.17 mm', 'within', feeler),
      reading('build', 'exhaust', '.008"', '0.20 mm', '0.18 to 0.22 mm', 'within', feeler),
    ],
    derived: [],
  },
  {
    feature: 'Head bolts',
    source: manual,
    standing: 'confirmed',
    fastener: '8 bolts, 5/16-18 UNC, grade 5',
    conflicts: ['19 to 21 lbf·ft, Calder fastener card, 2nd printing, page 3'],
    readings: [
      reading('build', 'stage 1', '6 lbf·ft', '8.1 N·m', '5 to 7 lbf·ft', 'within', wrench),
      reading('build', 'stage 2', '12 lbf·ft', '16.3 N·m', '11 to 13 lbf·ft', 'within', wrench),
      reading(
        'build',
        'stage 3',
        '17 lbf·ft',
        '23.0 N·m',
        '16 to 18 lbf·ft, aim 17',
        'within',
        wrench,
      ),
    ],
    derived: [],
  },
  {
    feature: 'Charging winding resistance',
    source: '',
    standing: 'none',
    fastener: '',
    conflicts: [],
    readings: [
      reading('test run', '', '3.4 Ω', '', '', 'no-band', {
        gauge: 'Multimeter MM-1',
        uncertainty: '±0.1 Ω',
        by: 'Ines Ferro',
        at: '2026-03-26T15:00:00Z',
      }),
    ],
    derived: [derived('test run', 'at 20 °C', '3.36 Ω')],
  },
];

const decisions: DecisionLine[] = [
  {
    part: 'Cylinder bore',
    choice: 'Next oversize, 0.25 mm',
    machineTo: '68.250 to 68.265 mm\n2.6870 to 2.6876 in',
    reason: '',
    by: 'Tomas Lindholt',
    at: '2026-03-18T14:05:00Z',
  },
  {
    part: 'Connecting rod',
    choice: 'Reuse',
    machineTo: '',
    reason: 'Clearance near its limit; the customer was told and wants it so',
    by: 'Ines Ferro',
    at: '2026-03-18T14:20:00Z',
  },
];

const photos: PhotoLine[] = [
  {
    shows: 'Cylinder bore',
    caption: 'Scored on the thrust side',
    fingerprint: '5c'.repeat(32),
    by: 'Tomas Lindholt',
    at: '2026-03-17T15:50:00Z',
  },
];

export const workOrder = {
  ...head,
  kind: 'work-order',
  complaint: claimTicket.complaint,
  symptoms: claimTicket.symptoms,
  condition: claimTicket.condition,
  leftWith: claimTicket.leftWith,
  fuel: claimTicket.fuel,
  lastService: claimTicket.lastService,
  findings,
  workDone:
    'Engine stripped and measured. Cylinder bored to 0.25 mm oversize, new piston and rings, crankshaft reused after measuring. Valves lapped, lash set cold. Ignition air gap set at both legs. Test run of 20 minutes: idle and top no-load speed by tachometer, stop switch and tine interlock work, no leaks.',
  engineModel: 'Torvane TV 212',
  decisions,
  features,
  photos,
  holdPoints: [
    {
      label: 'Connecting-rod cap the right way round',
      outcome: 'passed',
      detail: '',
      by: 'Tomas Lindholt',
      at: '2026-03-25T17:10:00Z',
      reason: '',
      order: 1,
      after: '',
      doneBefore: [],
      openedAgain: '',
      gauges: '',
    },
    {
      label: 'Timing marks in line',
      outcome: 'passed',
      detail: '',
      by: 'Tomas Lindholt',
      at: '2026-03-25T17:35:00Z',
      reason: '',
      order: 2,
      after: '4 min 05 s',
      doneBefore: [],
      openedAgain: '',
      gauges: '',
    },
    {
      label: 'Fasteners checked again after the test run',
      outcome: 'overridden',
      detail: '',
      by: 'Ines Ferro',
      at: '2026-03-26T16:40:00Z',
      reason: 'The maker asks for no second tightening of this head gasket (manual, page 16).',
      order: 3,
      after: '4 min 05 s',
      doneBefore: [],
      openedAgain: '',
      gauges: '',
    },
  ],
  testRun: {
    passed: true,
    by: 'Tomas Lindholt',
    at: '2026-03-26T15:20:00Z',
    facts: [
      { name: 'Tried', value: 'Stop switch: works, Governor: works' },
      { name: 'Idle', value: '1750 rpm' },
    ],
  },
  lines,
  totals,
  approvals,
  payments,
  due: 0,
  dueOn: null,
  invoiceNumber: 'I-000137',
  passedOver: [
    {
      says: 'One part is billed and not issued.',
      items: ['1 pc OS-172-011 Oil seal'],
      reason: 'The customer brought his own seal, and paid for fitting it.',
    },
  ],
  oldParts: 'Piston, rings and gaskets returned to the customer.',
  warranty:
    'Twelve months on the work and parts listed here, not on wear, fuel that has gone off, or running without oil.',
  advice: [
    'First five hours: vary the load, no long idling, no full load.',
    'Change the oil after five hours, then every fifty or once a season.',
  ],
  nextServiceOn: '2026-10-01',
  cautions,
  customerSignature: signature('Łucja Żółkiewska', 1),
  shopSignature: { ...signature('Ines Ferro', 2), typedBy: 'Ines Ferro', strokes: [] },
} satisfies WorkOrder;

export const clearanceSheet = {
  ...head,
  kind: 'clearance-sheet',
  number: 'K-000042',
  engineModel: 'Torvane TV 212',
  engineHours: '1,240.5',
  decisions,
  features,
  photos,
  cautions,
} satisfies ClearanceSheet;
