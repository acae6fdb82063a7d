import {
  bookedCreditNotes,
  bookedInvoices,
  invoiceHeads,
} from '../../../../../db/queries/till/books/booked.ts';
import { ALWAYS } from '../../../../../db/queries/till/books/span.ts';
import type { ReadStore } from '../../../../../db/store.ts';
import type { Line } from '../../../../../shared/contract/till/index.ts';
import { netByLine } from '../../../../../shared/money/books/index.ts';
import { divideRounded, lineAmount, type Rounding } from '../../../../../shared/money/index.ts';
import { LINE_KIND_LABELS } from '../../../../../shared/work/vocabulary.ts';
import { spanOfDays } from '../span-of-days.ts';
import { type Asked, kindsTaxedBy } from './table.ts';
import { costedTime } from './worked-time.ts';

/** What one kind of work on one job brought and cost. Money: integer minor units. */
export interface CostedWork {
  jobId: string;
  jobCode: string;
  customerName: string;
  /** Kind of work for labour, kind of line for all else. */
  kind: string;
  sales: number;
  cost: number;
  /** Of the sales: those whose cost nobody knows. */
  uncosted: number;
}

const isCore = ({ kind }: Line): boolean => kind === 'core-charge' || kind === 'core-credit';

const kindOf = (line: Line): string =>
  line.kind === 'labour' && line.workKind !== '' ? line.workKind : LINE_KIND_LABELS[line.kind];

const costOfTime = (
  { minutes, hourlyCost }: { minutes: number; hourlyCost: number },
  rounding: Rounding,
): number => Number(divideRounded(BigInt(minutes) * BigInt(hourlyCost), 60n, rounding));

/**
 * What was invoiced in a time, less what was credited, beside what it cost. Where time was clocked on a job
 * and an hour of who worked has a cost, labour costs that; else what its lines say. A job's time counts once,
 * with its first bill. A credit note takes off sales and leaves the costs.
 */
export function costedWork(store: ReadStore, { shop, from, to }: Asked): CostedWork[] {
  const { timeZone, rounding } = shop;
  const whose = { span: spanOfDays(timeZone, from, to), customerId: null };
  const kindsTaxed = kindsTaxedBy(shop);
  const invoices = bookedInvoices(store, whose);
  const creditNotes = bookedCreditNotes(store, whose);
  const firstBills = new Map(
    invoiceHeads(store, { span: ALWAYS, customerId: null })
      .filter(({ sort }) => sort !== 'storage')
      .toReversed()
      .map(({ jobId, id }) => [jobId, id]),
  );

  const found: CostedWork[] = [];
  for (const invoice of invoices) {
    const { jobId, jobCode, customerName, lines } = invoice;
    const about = { jobId, jobCode, customerName };
    const time = costedTime(store, jobId);
    const net = netByLine(invoice, kindsTaxed);
    for (const [index, line] of lines.entries()) {
      if (isCore(line)) continue;
      const sales = net[index] ?? 0;
      const byClock = line.kind === 'labour' && time.length > 0;
      const known = byClock || line.unitCost !== null;
      const cost =
        byClock || line.unitCost === null
          ? 0
          : lineAmount({ quantity: line.quantity, unitPrice: line.unitCost }, rounding);
      found.push({ ...about, kind: kindOf(line), sales, cost, uncosted: known ? 0 : sales });
    }
    if (firstBills.get(jobId) !== invoice.id) continue;
    for (const span of time)
      found.push({
        ...about,
        kind: span.workKind === '' ? LINE_KIND_LABELS.labour : span.workKind,
        sales: 0,
        cost: costOfTime(span, rounding),
        uncosted: 0,
      });
  }
  for (const creditNote of creditNotes) {
    const { jobId, jobCode, customerName, lines } = creditNote;
    const net = netByLine(creditNote, kindsTaxed);
    for (const [index, line] of lines.entries())
      if (!isCore(line))
        found.push({
          jobId,
          jobCode,
          customerName,
          kind: kindOf(line),
          sales: -(net[index] ?? 0),
          cost: 0,
          uncosted: 0,
        });
  }
  return found;
}
