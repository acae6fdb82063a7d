import { and, asc, eq, type SQL } from 'drizzle-orm';
import { CustomerId, InvoiceId, type JobCode, jobCode } from '../../../../shared/contract/ids.ts';
import { Line, Totals } from '../../../../shared/contract/till/index.ts';
import {
  application,
  creditNote,
  customer,
  invoice,
  job,
  payment,
  receipt,
  staff,
} from '../../../schema/index.ts';
import type { ReadStore } from '../../../store.ts';
import { creditNoteNumber, invoiceNumber } from '../invoices.ts';
import { receiptNumber } from '../payments.ts';
import { type Span, within } from './span.ts';

/** What was booked at the till, of all jobs or of one customer's, oldest first. */

export interface Whose {
  readonly span: Span;
  /** Null: of all. */
  readonly customerId: string | null;
}

const party = {
  jobId: job.id,
  jobNumber: job.number,
  customerId: customer.id,
  customerName: customer.name,
};

type PartyRow = { jobId: string; jobNumber: number; customerId: string; customerName: string };

const asParty = ({ jobId, jobNumber, customerId, customerName }: PartyRow) => ({
  jobId,
  jobCode: jobCode(jobNumber),
  customerId: CustomerId.parse(customerId),
  customerName,
});

/** Of whom and for which job. */
export interface BookedFor {
  jobId: string;
  jobCode: JobCode;
  customerId: CustomerId;
  customerName: string;
}

const ofCustomer = (customerId: string | null): SQL | undefined =>
  customerId === null ? undefined : eq(job.customerId, customerId);

/** Invoices without their lines: what there is to sum over years. */
export const invoiceHeads = (store: ReadStore, { span, customerId }: Whose) =>
  store
    .select({
      id: invoice.id,
      number: invoice.number,
      sort: invoice.sort,
      total: invoice.total,
      dueOn: invoice.dueOn,
      at: invoice.at,
      ...party,
    })
    .from(invoice)
    .innerJoin(job, eq(job.id, invoice.jobId))
    .innerJoin(customer, eq(customer.id, job.customerId))
    .where(and(within(invoice.at, span), ofCustomer(customerId)))
    .orderBy(asc(invoice.number))
    .all()
    .map(({ id, number, sort, total, dueOn, at, ...rest }) => ({
      ...asParty(rest),
      id: InvoiceId.parse(id),
      number: invoiceNumber(number),
      sort,
      total,
      dueOn,
      at,
    }));

/** Credit notes without their lines. */
export const creditNoteHeads = (store: ReadStore, { span, customerId }: Whose) =>
  store
    .select({
      invoiceId: creditNote.invoiceId,
      number: creditNote.number,
      amount: creditNote.total,
      at: creditNote.at,
      ...party,
    })
    .from(creditNote)
    .innerJoin(job, eq(job.id, creditNote.jobId))
    .innerJoin(customer, eq(customer.id, job.customerId))
    .where(and(within(creditNote.at, span), ofCustomer(customerId)))
    .orderBy(asc(creditNote.number))
    .all()
    .map(({ invoiceId, number, amount, at, ...rest }) => ({
      ...asParty(rest),
      invoiceId,
      number: creditNoteNumber(number),
      amount,
      at,
    }));

export type BookedInvoice = ReturnType<typeof bookedInvoices>[number];

export const bookedInvoices = (store: ReadStore, { span, customerId }: Whose) =>
  store
    .select({ invoice, ...party })
    .from(invoice)
    .innerJoin(job, eq(job.id, invoice.jobId))
    .innerJoin(customer, eq(customer.id, job.customerId))
    .where(and(within(invoice.at, span), ofCustomer(customerId)))
    .orderBy(asc(invoice.number))
    .all()
    .map(({ invoice: row, ...rest }) => ({
      ...asParty(rest),
      id: InvoiceId.parse(row.id),
      number: invoiceNumber(row.number),
      sort: row.sort,
      lines: row.lines.map((line) => Line.parse(line)),
      totals: Totals.parse(row.totals),
      dueOn: row.dueOn,
      at: row.at,
    }));

export type BookedCreditNote = ReturnType<typeof bookedCreditNotes>[number];

export const bookedCreditNotes = (store: ReadStore, { span, customerId }: Whose) =>
  store
    .select({ creditNote, ...party })
    .from(creditNote)
    .innerJoin(job, eq(job.id, creditNote.jobId))
    .innerJoin(customer, eq(customer.id, job.customerId))
    .where(and(within(creditNote.at, span), ofCustomer(customerId)))
    .orderBy(asc(creditNote.number))
    .all()
    .map(({ creditNote: row, ...rest }) => ({
      ...asParty(rest),
      invoiceId: row.invoiceId,
      number: creditNoteNumber(row.number),
      lines: row.lines.map((line) => Line.parse(line)),
      totals: Totals.parse(row.totals),
      at: row.at,
    }));

export const bookedPayments = (store: ReadStore, { span, customerId }: Whose) =>
  store
    .select({ payment, receipt: receipt.number, byName: staff.name, ...party })
    .from(payment)
    .innerJoin(staff, eq(staff.id, payment.by))
    .innerJoin(job, eq(job.id, payment.jobId))
    .innerJoin(customer, eq(customer.id, job.customerId))
    .leftJoin(receipt, eq(receipt.id, payment.receiptId))
    .where(and(within(payment.at, span), ofCustomer(customerId)))
    .orderBy(asc(payment.at), asc(payment.id))
    .all()
    .map(({ payment: { kind, method, amount, at }, receipt: number, byName, ...rest }) => ({
      ...asParty(rest),
      kind,
      method,
      amount,
      number: number === null ? '' : receiptNumber(number),
      by: byName,
      at,
    }));

export const bookedApplications = (store: ReadStore, { span, customerId }: Whose) =>
  store
    .select({ application, invoice: invoice.number, ...party })
    .from(application)
    .innerJoin(invoice, eq(invoice.id, application.invoiceId))
    .innerJoin(job, eq(job.id, application.jobId))
    .innerJoin(customer, eq(customer.id, job.customerId))
    .where(and(within(application.at, span), ofCustomer(customerId)))
    .orderBy(asc(application.at), asc(application.id))
    .all()
    .map(({ application: { invoiceId, amount, at }, invoice: number, ...rest }) => ({
      ...asParty(rest),
      invoiceId,
      number: invoiceNumber(number),
      amount,
      at,
    }));
