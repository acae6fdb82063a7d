import type { Shop } from '../../../shared/contract/office.ts';
import type {
  Approval,
  Discount,
  Line,
  Payment,
  Totals,
} from '../../../shared/contract/till/index.ts';
import { formatQuantity, formatRate, roundingSentence } from '../../../shared/money/index.ts';
import { approvalWords } from '../../../shared/work/typed-name.ts';
import { PAYMENT_METHOD_LABELS } from '../../../shared/work/vocabulary.ts';
import type {
  ApprovalLine,
  PaperLine,
  Totals as PaperTotals,
  PaymentLine,
} from '../../paper/content.ts';

/** Money as it stands on papers. */

/** Lines without what they cost the shop: that stays in the shop. */
export const paperLines = (lines: readonly Line[], shop: Shop): PaperLine[] =>
  lines.map((line) => ({
    kind: line.kind,
    description: line.description,
    partNumber: line.partNumber,
    quantity: formatQuantity(line.quantity, shop.locale),
    unit: line.unit,
    unitPrice: line.unitPrice,
    discount: takenOff(line.discounted, line.discount, shop),
    note: line.note === '' ? undefined : line.note,
    amount: line.amount,
  }));

const takenOff = (amount: number, rule: Discount | null, { locale }: Shop) =>
  amount === 0
    ? undefined
    : { share: rule?.by === 'share' ? formatRate(rule.ppm, locale) : '', amount };

const taxLines = (taxes: Totals['taxes'], { locale }: Shop): PaperTotals['taxes'] =>
  taxes.map(({ name, ratePpm, base, amount }) => ({
    name,
    rate: formatRate(ratePpm, locale),
    base,
    amount,
  }));

/** @param discount what was agreed off the whole bill; what it comes to is in the totals */
export const paperTotals = (
  totals: Totals,
  shop: Shop,
  discount: Discount | null = null,
): PaperTotals => ({
  subtotal: totals.subtotal,
  discount: takenOff(totals.discount, discount, shop),
  taxes: taxLines(totals.taxes, shop),
  pricesIncludeTax: totals.pricesIncludeTax || undefined,
  exemptBy: totals.exemptBy === '' ? undefined : totals.exemptBy,
  takenOut: totals.takenOut.length === 0 ? undefined : taxLines(totals.takenOut, shop),
  total: totals.total,
  rounding: roundingSentence({ rounding: shop.rounding, basis: shop.taxBasis }),
});

export const approvalLines = (approvals: readonly Approval[]): ApprovalLine[] =>
  approvals.map(({ approvedBy, how, typedBy, at, takenBy, amount, estimateNumber, note }) => ({
    by: approvedBy,
    how: approvalWords({ how, typedBy }),
    at,
    takenBy,
    amount,
    paperNumber: estimateNumber,
    note,
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
