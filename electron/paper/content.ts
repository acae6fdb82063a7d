import type { JobCode } from '../../shared/contract/ids.ts';

/**
 * What stands on a paper, as plain JSON. The desk assembles it inside the transaction that issues the
 * paper; its canonical form is what the fingerprint (SHA-256) is taken of; the PDF is drawn from it and
 * from nothing else. Money is integer minor units of `currency`; instants are UTC ISO 8601 strings,
 * dates ISO calendar dates.
 */
export type PaperContent =
  | ClaimTicket
  | Tag
  | Estimate
  | Invoice
  | CreditNote
  | Receipt
  | WorkOrder
  | ClearanceSheet
  | Statement
  | PurchaseOrder;

export type PaperKind = PaperContent['kind'];

/** What every paper carries. */
export interface PaperHead {
  /** Number that people read, e.g. `W-000042`. */
  number: string;
  issuedAt: string;
  issuedBy: string;
  shop: Shop;
  /** Left out on a paper that is about no single job, or about nobody in particular. */
  job?: JobHead;
  customer?: Party;
  machine?: MachineHead;
  /** The paper that this one corrects, if any, and why where that was said. */
  corrects?: { number: string; fingerprint: string; reason?: string };
}

/** What every paper of a job carries. */
export interface JobPaper extends PaperHead {
  job: JobHead;
  customer: Party;
  machine: MachineHead;
}

export interface Shop {
  name: string;
  addressLines: string[];
  phone: string;
  email: string;
  taxNumber: string;
  paperSize: 'A4' | 'Letter';
  /** BCP 47 tag that dates and amounts are written in. */
  locale: string;
  timeZone: string;
  currency: string;
}

export interface JobHead {
  number: number;
  /** What the barcode says. */
  code: JobCode;
  takenInOn: string;
  promisedFor: string | null;
}

export interface Party {
  name: string;
  phone: string;
  email: string;
  addressLines: string[];
}

export interface MachineHead {
  kind: string;
  make: string;
  model: string;
  serial: string;
  engineMake: string;
  engineModel: string;
  engineTypeCode: string;
  engineSerial: string;
  engineDateCode: string;
}

/** A signature: strokes as drawn on a pad, or a name typed in its place when there are none. */
export interface Signature {
  name: string;
  signedAt: string;
  /** Who typed the name in place of the signature; null when it was drawn. */
  typedBy: string | null;
  /** Polylines in a box of `width` × `height` units, y downwards. Empty: the name was typed. */
  strokes: { x: number; y: number }[][];
  width: number;
  height: number;
}

/** What came in: on the claim ticket, and once more on what is signed when it goes home. */
export interface TakenIn {
  complaint: string;
  symptoms: string[];
  condition: string;
  leftWith: string[];
  fuel: string;
  lastService: string;
}

/** Given to the customer at intake, signed by them. */
export interface ClaimTicket extends JobPaper, TakenIn {
  kind: 'claim-ticket';
  reachBy: string;
  diagnosisFee: number | null;
  /** Spending without a further call. */
  spendingLimit: number | null;
  deposit: number | null;
  terms: string[];
  cautions: string[];
  signature: Signature | null;
}

/** Wired to the machine: small, with a large code. */
export interface Tag extends JobPaper {
  kind: 'tag';
  complaint: string;
  leftWith: string[];
  cautions: string[];
  /** Why nobody may run the machine; left out of one that may be run. */
  doNotRun?: string;
}

export interface PaperLine {
  kind: 'labour' | 'part' | 'outside' | 'supplies' | 'fee' | 'core-charge' | 'core-credit';
  description: string;
  /** Part number, or empty. */
  partNumber: string;
  /** As written, e.g. `2`, `1.5`. */
  quantity: string;
  /** `h`, `pc` … */
  unit: string;
  unitPrice: number;
  /** Off this line, when something is: the share as written (`10 %`) or empty, and what it takes off. */
  discount?: { share: string; amount: number };
  /** Printed below the line, when there is one. */
  note?: string;
  /** After the discount. */
  amount: number;
}

interface TaxLine {
  name: string;
  /** As written, e.g. `6.25 %`. */
  rate: string;
  base: number;
  amount: number;
}

export interface Totals {
  subtotal: number;
  /** Off the whole bill, when something is: the share as written or empty, and what it takes off. */
  discount?: { share: string; amount: number };
  /** Set when the taxes are within the prices, and not added to them. */
  pricesIncludeTax?: boolean;
  /** The certificate by which no tax is charged, when there is one. */
  exemptBy?: string;
  /** What that certificate takes out of prices that include tax, when it does. */
  takenOut?: TaxLine[];
  taxes: TaxLine[];
  total: number;
  /** How amounts are rounded, in a sentence. */
  rounding: string;
}

export interface ApprovalLine {
  by: string;
  how: string;
  at: string;
  takenBy: string;
  amount: number;
  /** The estimate that was approved, or the claim ticket that a limit was signed on. */
  paperNumber: string;
  /** What was said with it, as taken down. */
  note: string;
}

export interface PaymentLine {
  at: string;
  what: string;
  method: string;
  amount: number;
}

export interface Estimate extends JobPaper {
  kind: 'estimate';
  revision: number;
  validUntil: string | null;
  /** What the diagnosis found before anything was taken apart. */
  findings: FindingLine[];
  /** Ways to do it, of which the customer takes one; the only one has no label. */
  options: { label: string; lines: PaperLine[]; totals: Totals }[];
  /** What the customer declined before and is in none of the options. */
  declined: { description: string; amount: number }[];
  note: string;
  terms: string[];
}

/** How a bill differs from what was approved. */
export interface DifferenceLine {
  description: string;
  /** Null for a line that nobody approved. */
  approved: number | null;
  /** Null for a line that was left out. */
  billed: number | null;
}

export interface Invoice extends JobPaper {
  kind: 'invoice';
  sort: 'work' | 'warranty' | 'storage';
  /** The job that warranty work goes back to, and why it is at no charge. */
  warranty: { job: JobCode; reason: string } | null;
  lines: PaperLine[];
  totals: Totals;
  approvals: ApprovalLine[];
  differences: DifferenceLine[];
  /** What the customer did not take. */
  declined: { description: string; amount: number }[];
  payments: PaymentLine[];
  due: number;
  /** The day that what is left is due; null for at once. */
  dueOn: string | null;
  note: string;
  terms: string[];
}

/** Lines of an issued invoice, or parts of them, taken off again. The invoice is what it corrects. */
export interface CreditNote extends JobPaper {
  kind: 'credit-note';
  lines: PaperLine[];
  totals: Totals;
  reason: string;
  /** Off what was still to be paid of the invoice. */
  offOpen: number;
  /** Paid before, and the customer's again. */
  freed: number;
  terms: string[];
}

/** What became of a sum that was handed over. */
export interface MoneyUse {
  job: JobCode;
  /** `Invoice I-000042`, or what it is kept for. */
  what: string;
  amount: number;
  /** What is left to pay of that invoice; null where there is none. */
  open: number | null;
}

/** Money that changed hands once; it may be for several jobs. */
export interface Receipt extends PaperHead {
  kind: 'receipt';
  /** `Deposit`, `Payment`, `Refund`. */
  what: string;
  /** The shop gave it to the customer. */
  back: boolean;
  method: string;
  reference: string;
  amount: number;
  /** Cash that was handed over; null when nobody counted it. */
  given: number | null;
  change: number;
  uses: MoneyUse[];
}

/** A recorded reading, with all that makes it worth something a year later. */
export interface ReadingLine {
  /** `As received`, `Final`. */
  phase: string;
  /** Where on the part: `top, along the crank`, `leg 1`, `stage 2`. Empty when there is one place only. */
  place: string;
  /** As typed, with its unit: `0.3 mm`. */
  asTyped: string;
  /** In the other unit, if the shop asks for both: `0.012 in`. Empty otherwise. */
  converted: string;
  /** `0.2 to 0.4 mm, aim 0.3`. */
  band: string;
  gauge: string;
  /** Expanded uncertainty (k = 2) as written, e.g. `±0.012 mm`. */
  uncertainty: string;
  verdict: 'within' | 'outside' | 'too-close' | 'no-band';
  /** `questioned (0.3?), kept as typed` … */
  remark: string;
  by: string;
  at: string;
}

/** A value that follows from the readings of a phase. */
export interface DerivedLine {
  phase: string;
  name: string;
  /** With its unit: `0.012 mm`. */
  value: string;
  uncertainty: string;
  band: string;
  verdict: ReadingLine['verdict'];
  /** `worn: beyond the limits of a new part …`; empty when there is nothing to say. */
  remark: string;
  /** Of its own limit; empty when there is none. */
  source: string;
  standing: Standing;
}

/** How far a specification is confirmed; `none` when there is none. */
export type Standing = 'confirmed' | 'single-source' | 'unconfirmed' | 'none';

/** What was measured on one feature against one specification, in all phases. */
export interface FeatureReadings {
  feature: string;
  /** `Workshop manual, 3rd edition, page 14`; empty when there is none. */
  source: string;
  standing: Standing;
  /** Of a torque, `4 bolts, M8 × 1.25, class 8.8`; empty when there are none or the source names none. */
  fastener: string;
  /** Figures of other sources that nobody has settled, each with its source: `60 to 65 N·m, Card, page 3`. */
  conflicts: string[];
  /** By phase. */
  readings: ReadingLine[];
  derived: DerivedLine[];
}

/** What became of a part, and who said so. */
export interface DecisionLine {
  /** `Piston, cylinder 2`. */
  part: string;
  /** `Next oversize, 0.25 mm`. */
  choice: string;
  /** What the machine shop brings it to, a line for each unit; empty when nothing is machined. */
  machineTo: string;
  reason: string;
  by: string;
  at: string;
}

/** A photo that the shop keeps of the job. */
export interface PhotoLine {
  /** The feature or the step of the build that it was taken of. */
  shows: string;
  caption: string;
  /** SHA-256 of its bytes. */
  fingerprint: string;
  by: string;
  at: string;
}

/** What one check of the diagnosis found. */
export interface FindingLine {
  check: string;
  outcome: 'sound' | 'wants-work' | 'not-tried';
  /** The outcome in words. */
  found: string;
  /** Figures with their units and what was seen, a line each. */
  seen: string;
  by: string;
  at: string;
}

export interface HoldPointLine {
  label: string;
  outcome: 'passed' | 'overridden' | 'open';
  /** What was noted with it: `600 ml`, how a part lies, which wires were joined. */
  detail: string;
  by: string;
  at: string;
  reason: string;
  /** Counted in the order in which the steps were done; null while it is open. */
  order: number | null;
  /** Since the step that was done before it: `4 min 05 s`; empty for the first. */
  after: string;
  /** Steps that come before it and were still open when it was done. */
  doneBefore: string[];
  /** What undid it after it was passed, when that left it open. */
  openedAgain: string;
  /** `Wrench T1; 8 pulls in 9 s`, `no gauge named`; empty where none is asked for. */
  gauges: string;
}

/** What the engine did once it was built. */
export interface TestRunRecord {
  passed: boolean;
  by: string;
  at: string;
  /** `Idle`, `1750 rpm` … */
  facts: { name: string; value: string }[];
}

/** What was measured so far, by itself: for the bench, or for the customer who asks. */
export interface ClearanceSheet extends JobPaper {
  kind: 'clearance-sheet';
  engineModel: string;
  /** Running hours when the engine came in, as written, e.g. `1,240`; empty when nobody knew. */
  engineHours: string;
  decisions: DecisionLine[];
  features: FeatureReadings[];
  photos: PhotoLine[];
  cautions: string[];
}

/** Signed at handover by both sides. */
export interface WorkOrder extends JobPaper, TakenIn {
  kind: 'work-order';
  /** Why nobody may run the machine as it leaves; left out of one that may be run. */
  doNotRun?: string;
  /** `Service`, `Repair: starter`; left out where nobody said. */
  workKind?: string;
  findings: FindingLine[];
  workDone: string;
  engineModel: string;
  decisions: DecisionLine[];
  features: FeatureReadings[];
  holdPoints: HoldPointLine[];
  /** The last run before handover; null when it was not run. */
  testRun: TestRunRecord | null;
  photos: PhotoLine[];
  lines: PaperLine[];
  totals: Totals;
  approvals: ApprovalLine[];
  payments: PaymentLine[];
  due: number;
  /** The day that what is left is due; null for at once. */
  dueOn: string | null;
  invoiceNumber: string;
  /** What was not settled when the machine went out, and why it went out nevertheless. */
  passedOver: { says: string; items: string[]; reason: string }[];
  oldParts: string;
  warranty: string;
  advice: string[];
  nextServiceOn: string | null;
  cautions: string[];
  customerSignature: Signature;
  shopSignature: Signature;
}

export interface StatementEntry {
  on: string;
  what: string;
  /** Of the document; empty for money without a receipt. */
  number: string;
  job: JobCode;
  /** What the customer owes more by it; below zero: less. */
  amount: number;
  balance: number;
}

/** A customer's account over a time. */
export interface Statement extends PaperHead {
  kind: 'statement';
  customer: Party;
  from: string;
  to: string;
  opening: number;
  entries: StatementEntry[];
  closing: number;
  openInvoices: { number: string; job: JobCode; invoicedOn: string; dueOn: string; open: number }[];
  /** What is open, by how long it has been due. */
  ages: { label: string; amount: number }[];
  /** Paid and not applied to an invoice. */
  unapplied: number;
  terms: string[];
}

export interface OrderedLine {
  /** Theirs, and the shop's own where it differs. */
  supplierNumber: string;
  ownNumber: string;
  description: string;
  quantity: string;
  unit: string;
  unitCost: number;
  amount: number;
  /** The job that it is for alone, or empty. */
  job: JobCode | '';
  expectedOn: string | null;
}

/** What the shop orders from a supplier. */
export interface PurchaseOrder extends PaperHead {
  kind: 'purchase-order';
  supplier: Party;
  /** What the shop is called in the supplier's books. */
  accountNumber: string;
  expectedOn: string | null;
  lines: OrderedLine[];
  goods: number;
  carriage: number;
  total: number;
  note: string;
}
