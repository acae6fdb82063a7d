import { z } from 'zod';
import { OWNER_WANTED, reads, writes } from '../base.ts';
import { CalendarDate, Minor, maybeText } from '../fields.ts';
import { CustomerId, StaffId } from '../ids.ts';

const termFields = {
  /** Where this customer's work is taxed, as the tax rules say their place; empty: as everybody here. */
  taxPlace: maybeText(60),
  /** Number of the certificate by which no tax is charged, or empty. */
  exemptCertificate: maybeText(60),
  /** The last day that the certificate holds; null when it has no end. */
  exemptUntil: CalendarDate.nullable().default(null),
  /** Takes the machine and pays the invoice later. */
  onAccount: z.boolean().default(false),
  /** Days from the invoice until it is due. */
  termsDays: z.int().min(0).max(365).default(0),
  /** What may be owed at most, minor units; null for no end. */
  creditLimit: Minor.nullable().default(null),
};

/** How a customer is taxed and when they pay. */
export const CustomerTerms = z.strictObject(termFields);
export type CustomerTerms = z.infer<typeof CustomerTerms>;

export const terms = {
  customerTerms: reads.input(z.strictObject({ customerId: CustomerId })).output(CustomerTerms),

  /** Anybody enters tax place and certificate; who pays later, and how much later, the owner decides. */
  setCustomerTerms: writes
    .errors({ OWNER_WANTED })
    .input(z.strictObject({ by: StaffId, customerId: CustomerId, ...termFields }))
    .output(CustomerTerms),
};
