/** Closed lists of trade words that contract, store and screens share; each with what people read. */

export const MACHINE_KINDS = [
  'tiller',
  'mower',
  'riding-mower',
  'pump',
  'generator',
  'log-splitter',
  'snow-thrower',
  'pressure-washer',
  'chipper',
  'chainsaw',
  'kart',
  'other',
] as const;
export type MachineKind = (typeof MACHINE_KINDS)[number];

export const MACHINE_KIND_LABELS: Record<MachineKind, string> = {
  tiller: 'Tiller',
  mower: 'Mower',
  'riding-mower': 'Riding mower',
  pump: 'Pump',
  generator: 'Generator',
  'log-splitter': 'Log splitter',
  'snow-thrower': 'Snow thrower',
  'pressure-washer': 'Pressure washer',
  chipper: 'Chipper',
  chainsaw: 'Chainsaw',
  kart: 'Kart',
  other: 'Other machine',
};

export const SYMPTOMS = [
  'will-not-start',
  'hard-to-start',
  'no-spark',
  'low-power',
  'stops-when-hot',
  'hunts',
  'smokes',
  'knocks',
  'burns-oil',
  'leaks-oil',
  'leaks-fuel',
  'recoil-broken',
  'seized',
] as const;
export type Symptom = (typeof SYMPTOMS)[number];

export const SYMPTOM_LABELS: Record<Symptom, string> = {
  'will-not-start': 'Will not start',
  'hard-to-start': 'Hard to start',
  'no-spark': 'No spark',
  'low-power': 'Low power',
  'stops-when-hot': 'Stops when hot',
  hunts: 'Hunts (speed swings)',
  smokes: 'Smokes',
  knocks: 'Knocks',
  'burns-oil': 'Burns oil',
  'leaks-oil': 'Leaks oil',
  'leaks-fuel': 'Leaks fuel',
  'recoil-broken': 'Recoil starter broken',
  seized: 'Seized',
};

export const REACH_BY = ['telephone', 'text', 'e-mail'] as const;
export type ReachBy = (typeof REACH_BY)[number];

export const REACH_BY_LABELS: Record<ReachBy, string> = {
  telephone: 'Telephone',
  text: 'Text message',
  'e-mail': 'E-mail',
};

export const LINE_KINDS = [
  'labour',
  'part',
  'outside',
  'supplies',
  'fee',
  'core-charge',
  'core-credit',
] as const;
export type LineKind = (typeof LINE_KINDS)[number];

export const LINE_KIND_LABELS: Record<LineKind, string> = {
  labour: 'Labour',
  part: 'Part',
  outside: 'Outside work',
  supplies: 'Supplies',
  fee: 'Fee',
  'core-charge': 'Core charge',
  'core-credit': 'Core credit',
};

/** Where the price of a line came from. */
export const PRICE_ORIGINS = [
  'typed',
  'shelf-price',
  'list-price',
  'cost-and-markup',
  'labour-rate',
  'clocked-time',
  'bundle',
  'supplies-rule',
  'storage-rule',
] as const;
export type PriceOrigin = (typeof PRICE_ORIGINS)[number];

export const PRICE_ORIGIN_LABELS: Record<PriceOrigin, string> = {
  typed: 'Typed in',
  'shelf-price': 'Price of the shelf',
  'list-price': 'Supplier’s list price',
  'cost-and-markup': 'Cost and markup',
  'labour-rate': 'Rate of the shop',
  'clocked-time': 'Clocked time',
  bundle: 'From a bundle',
  'supplies-rule': 'Share of the bill',
  'storage-rule': 'Storage by the day',
};

/** How a part comes by its price. */
export const PRICE_RULES = ['fixed', 'markup', 'list'] as const;
export type PriceRule = (typeof PRICE_RULES)[number];

export const PRICE_RULE_LABELS: Record<PriceRule, string> = {
  fixed: 'Fixed price',
  markup: 'Cost and markup',
  list: 'Supplier’s list price',
};

/** What an invoice is for. */
export const INVOICE_SORTS = ['work', 'warranty', 'storage'] as const;
export type InvoiceSort = (typeof INVOICE_SORTS)[number];

export const INVOICE_SORT_LABELS: Record<InvoiceSort, string> = {
  work: 'Work',
  warranty: 'Warranty work',
  storage: 'Storage',
};

export const APPROVAL_WAYS = ['in-person', 'telephone', 'text', 'e-mail'] as const;
export type ApprovalWay = (typeof APPROVAL_WAYS)[number];

export const APPROVAL_WAY_LABELS: Record<ApprovalWay, string> = {
  'in-person': 'In person',
  telephone: 'By telephone',
  text: 'By text message',
  'e-mail': 'By e-mail',
};

export const PAYMENT_METHODS = ['cash', 'card', 'transfer', 'cheque'] as const;
export type PaymentMethod = (typeof PAYMENT_METHODS)[number];

export const PAYMENT_METHOD_LABELS: Record<PaymentMethod, string> = {
  cash: 'Cash',
  card: 'Card',
  transfer: 'Bank transfer',
  cheque: 'Cheque',
};

export const PAYMENT_KINDS = ['deposit', 'payment', 'refund'] as const;
export type PaymentKind = (typeof PAYMENT_KINDS)[number];

/** What becomes of a person's clock. */
export const CLOCK_EVENTS = ['on', 'off', 'corrected', 'struck-out'] as const;
export type ClockEvent = (typeof CLOCK_EVENTS)[number];

export const SOURCE_KINDS = [
  'makers-manual',
  'bulletin',
  'handbook-or-standard',
  'suppliers-sheet',
  'measured-on-a-good-engine',
  'common-practice',
  'heard-or-found',
] as const;
export type SourceKind = (typeof SOURCE_KINDS)[number];

export const SOURCE_KIND_LABELS: Record<SourceKind, string> = {
  'makers-manual': 'Maker’s manual',
  bulletin: 'Bulletin',
  'handbook-or-standard': 'Handbook or standard',
  'suppliers-sheet': 'Supplier’s sheet',
  'measured-on-a-good-engine': 'Measured on a good engine',
  'common-practice': 'Common practice',
  'heard-or-found': 'Heard or found',
};

export const STANDINGS = ['confirmed', 'single-source', 'unconfirmed'] as const;
export type Standing = (typeof STANDINGS)[number];

export const STANDING_LABELS: Record<Standing, string> = {
  confirmed: 'Confirmed',
  'single-source': 'Single source',
  unconfirmed: 'Unconfirmed',
};

export const PHASES = ['as-received', 'after-machining', 'final'] as const;
export type Phase = (typeof PHASES)[number];

export const PHASE_LABELS: Record<Phase, string> = {
  'as-received': 'As received',
  'after-machining': 'After machining',
  final: 'Final',
};

export const GAUGE_KINDS = [
  'feeler-gauge',
  'micrometer',
  'bore-gauge',
  'caliper',
  'dial-indicator',
  'torque-wrench',
  'pressure-gauge',
  'ohmmeter',
  'tachometer',
  'other',
] as const;
export type GaugeKind = (typeof GAUGE_KINDS)[number];

export const GAUGE_KIND_LABELS: Record<GaugeKind, string> = {
  'feeler-gauge': 'Feeler gauge',
  micrometer: 'Micrometer',
  'bore-gauge': 'Bore gauge',
  caliper: 'Caliper',
  'dial-indicator': 'Dial indicator',
  'torque-wrench': 'Torque wrench',
  'pressure-gauge': 'Pressure gauge',
  ohmmeter: 'Ohmmeter',
  tachometer: 'Tachometer',
  other: 'Other gauge',
};

export const CYCLES = ['four-stroke', 'two-stroke'] as const;
export type Cycle = (typeof CYCLES)[number];

export const CYCLE_LABELS: Record<Cycle, string> = {
  'four-stroke': 'Four-stroke',
  'two-stroke': 'Two-stroke',
};

/** Where the valves of a four-stroke stand: above the piston, or in the block beside it. */
export const VALVE_LAYOUTS = ['overhead', 'side'] as const;
export type ValveLayout = (typeof VALVE_LAYOUTS)[number];

export const PAPER_KINDS = [
  'claim-ticket',
  'tag',
  'estimate',
  'invoice',
  'work-order',
  'clearance-sheet',
  'credit-note',
  'receipt',
  'statement',
  'purchase-order',
] as const;
export type PaperKind = (typeof PAPER_KINDS)[number];

export const STAFF_ROLES = ['owner', 'counter', 'bench'] as const;
export type StaffRole = (typeof STAFF_ROLES)[number];

export const STAFF_ROLE_LABELS: Record<StaffRole, string> = {
  owner: 'Owner',
  counter: 'Counter',
  bench: 'Bench',
};
