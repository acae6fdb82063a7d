import type { Shop } from '../../../shared/contract/office.ts';
import type { Approval, Line, Payment, Totals } from '../../../shared/contract/till/index.ts';
import { formatQuantity, formatRate, roundingSentence } from '../../../shared/money/index.ts';
import { APPROVAL_WAY_LABELS, PAYMENT_METHOD_LABELS } from '../../../shared/work/vocabulary.ts';
import type {
  ApprovalLine,
  PaperLine,
  Totals as PaperTotals,
  PaymentLine,
} from '../../paper/content.ts';

/** Money as it stands on papers. */

export const paperLines = (lines: readonly Line[], { locale }: Shop): PaperLine[] =>
  lines.map(({ kind, description, partNumber, quantity, unit, unitPrice, amount }) => ({
    kind,
    description,
    partNumber,
    quantity: formatQuantity(quantity, locale),
    unit,
    unitPrice,
    amount,
  }));

export const paperTotals = ({ subtotal, taxes, total }: Totals, shop: Shop): PaperTotals => ({
  subtotal,
  taxes: taxes.map(({ name, ratePpm, base, amount }) => ({
    name,
    rate: formatRate(ratePpm, shop.locale),
    base,
    amount,
  })),
  total,
  rounding: roundingSentence({ rounding: shop.rounding, basis: shop.taxBasis }),
});

export const approvalLines = (approvals: readonly Approval[]): ApprovalLine[] =>
  approvals.map(({ approvedBy, how, at, takenBy, amount, estimateNumber }) => ({
    by: approvedBy,
    how: APPROVAL_WAY_LABELS[how],
    at,
    takenBy,
    amount,
    estimateNumber,
  }));

export const PAYMENT_WORDS: Record<Payment['kind'], string> = {
  deposit: 'Deposit',
  payment: 'Payment',
  refund: 'Refund',
};

export const paymentLines = (payments: readonly Payment[]): PaymentLine[] =>
  payments.map(({ at, kind, method, amount }) => ({
    at,
    what: PAYMENT_WORDS[kind],
    method: PAYMENT_METHOD_LABELS[method],
    amount: kind === 'refund' ? -amount : amount,
  }));
