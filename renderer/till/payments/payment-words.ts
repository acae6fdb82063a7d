import type { Account } from '../../../shared/contract/till/index.ts';
import type { PaymentKind } from '../../../shared/work/vocabulary.ts';

export const PAYMENT_KIND_LABELS: Record<PaymentKind, string> = {
  deposit: 'Deposit',
  payment: 'Payment',
  refund: 'Refund',
};

/** What can be taken or given back as the account stands, the likeliest first. */
export function possibleKinds({ invoice, due, unapplied }: Account): PaymentKind[] {
  const back: PaymentKind[] = unapplied > 0 ? ['refund'] : [];
  if (invoice === null) return ['deposit', ...back];
  return due > 0 ? ['payment', ...back] : back;
}

/** What can be taken without asking what becomes of the rest; null where any sum may be taken. */
export const mostDue = (kind: PaymentKind, { invoice, due }: Account): number | null =>
  kind === 'refund' || (kind === 'deposit' && invoice === null) ? null : Math.max(0, due);

/** The amount that is likeliest meant, in minor units; null when nothing is to be expected. */
export function likelyAmount(kind: PaymentKind, account: Account): number | null {
  if (kind === 'payment') return Math.max(0, account.due);
  if (kind === 'refund') return account.invoice !== null ? account.unapplied : null;
  const open = (account.depositAgreed ?? 0) - account.paid;
  return open > 0 ? open : null;
}
