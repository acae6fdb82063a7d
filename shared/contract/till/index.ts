import { z } from 'zod';
import { reads } from '../base.ts';
import { JobId } from '../ids.ts';
import { Account } from './account.ts';
import { approvals } from './approvals.ts';
import { books } from './books.ts';
import { bundles } from './bundles.ts';
import { clock } from './clock.ts';
import { creditNotes } from './credit-notes.ts';
import { estimates } from './estimates.ts';
import { invoices } from './invoices.ts';
import { limit } from './limit.ts';
import { payments } from './payments.ts';
import { rules } from './rules.ts';
import { staffCosts } from './staff-costs.ts';
import { storage } from './storage.ts';
import { terms } from './terms.ts';
import { warranty } from './warranty.ts';

export * from './account.ts';
export * from './books.ts';
export * from './bundles.ts';
export * from './clock.ts';
export * from './customer-money.ts';
export * from './estimates.ts';
export * from './limit.ts';
export * from './lines.ts';
export * from './rules.ts';
export * from './staff-costs.ts';
export * from './storage.ts';
export * from './terms.ts';
export * from './warranty.ts';

/** The till: estimates, approvals, invoices, payments. Money is integer minor units. */
export const till = {
  ...rules,
  ...terms,
  ...staffCosts,
  ...bundles,
  account: reads.input(z.strictObject({ jobId: JobId })).output(Account),
  ...estimates,
  ...approvals,
  ...limit,
  ...invoices,
  ...creditNotes,
  ...payments,
  ...clock,
  ...storage,
  ...warranty,
  ...books,
};
