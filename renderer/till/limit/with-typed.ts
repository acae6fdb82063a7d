import type { BillAhead, BillTerms, Discount } from '../../../shared/contract/till/index.ts';
import { overApproval } from '../../../shared/work/till/approval.ts';
import type { DraftLine, MoneyRules } from '../lines/draft-line.ts';
import { hasNoPrice, isBlank } from '../lines/draft-line.ts';
import { drawDraft } from '../lines/draw-draft.ts';
import { withBeyond } from './with-beyond.ts';

interface Typed {
  lines: readonly DraftLine[];
  discount: Discount | null;
  /** Something is typed that is not written yet. */
  changed: boolean;
}

/** What the bill is heading to with what is typed: prices that were set are counted before they are written. */
export function withTyped(
  ahead: BillAhead,
  { lines, discount, changed }: Typed,
  { rules, terms }: { rules: MoneyRules; terms: BillTerms },
): BillAhead {
  if (!changed) return ahead;
  const all = withBeyond(lines, ahead.beyond, rules);
  const { total } = drawDraft({ lines: all, discount }, rules, terms).totals;
  return {
    ...ahead,
    total,
    over: overApproval(total, ahead.limit),
    unpriced: all
      .filter((line) => !isBlank(line, rules) && hasNoPrice(line))
      .map(({ description }) => description),
  };
}
