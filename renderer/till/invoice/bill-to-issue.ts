import type {
  Account,
  BillTerms,
  Discount,
  Line,
  LineInput,
  Totals,
} from '../../../shared/contract/till/index.ts';
import { drawUp } from '../../../shared/money/index.ts';
import {
  type BillDifference,
  billDifferences,
} from '../../../shared/work/till/bill-differences.ts';
import { workToBill } from '../../../shared/work/till/work-to-bill.ts';

/** A bill before it is issued. */
interface BillToIssue {
  lines: Pick<Line, 'kind' | 'partId' | 'quantity'>[];
  totals: Totals;
  differences: BillDifference[];
}

/** What would be billed as it was estimated and taken; null for a job without an estimate. */
export function billAsEstimated(account: Account, terms: BillTerms) {
  const work = workToBill(account);
  if (work === null) return null;
  const { estimate, option, lines, approval } = work;
  const drawn = drawUp({ lines, discount: option.discount }, terms);
  return {
    revision: estimate.revision,
    option: estimate.options.length > 1 ? option.label : '',
    declined: approval?.declined ?? [],
    lines: drawn.lines,
    totals: drawn.totals,
    differences: approval === null ? [] : billDifferences(lines, drawn.lines),
  };
}

/** What would be billed as it is typed, and how that differs from what was approved. */
export function billAsTyped(
  account: Account,
  { lines, discount }: { lines: readonly LineInput[]; discount: Discount | null },
  terms: BillTerms,
): BillToIssue {
  const work = workToBill(account);
  const drawn = drawUp({ lines, discount }, terms);
  return {
    lines: drawn.lines,
    totals: drawn.totals,
    differences: work?.approval ? billDifferences(work.lines, drawn.lines) : [],
  };
}
