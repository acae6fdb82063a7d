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

export const LINE_KINDS = ['labour', 'part', 'outside', 'supplies', 'fee'] as const;
export type LineKind = (typeof LINE_KINDS)[number];

export const LINE_KIND_LABELS: Record<LineKind, string> = {
  labour: 'Labour',
  part: 'Part',
  outside: 'Outside work',
  supplies: 'Supplies',
  fee: 'Fee',
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

export const PAPER_KINDS = [
  'claim-ticket',
  'tag',
  'estimate',
  'invoice',
  'work-order',
  'clearance-sheet',
] as const;
export type PaperKind = (typeof PAPER_KINDS)[number];

export const STAFF_ROLES = ['owner', 'counter', 'bench'] as const;
export type StaffRole = (typeof STAFF_ROLES)[number];

export const STAFF_ROLE_LABELS: Record<StaffRole, string> = {
  owner: 'Owner',
  counter: 'Counter',
  bench: 'Bench',
};
