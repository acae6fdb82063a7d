import type { BillAhead } from '../../../shared/contract/till/index.ts';
import { parseQuantity } from '../../../shared/money/index.ts';
import { isSameWork } from '../../../shared/work/till/bill-ahead.ts';
import { type DraftLine, draftOf, isBlank, type MoneyRules } from '../lines/draft-line.ts';

type BeyondLine = BillAhead['beyond'][number];

/** What came to the bill since the estimate and is not in the draft yet. */
export const missingBeyond = (
  lines: readonly DraftLine[],
  beyond: readonly BeyondLine[],
  rules: MoneyRules,
): BeyondLine[] =>
  beyond.filter(({ because, line, held }) => {
    const same = lines.filter((typed) =>
      isSameWork({ ...typed, description: typed.description.trim() }, line),
    );
    const drafted = same.reduce((sum, { quantity }) => sum + quantityTyped(quantity, rules), 0);
    // How much a decision takes is for the till to say: an hour of labour stands in for the hours.
    return because === 'decided' ? drafted <= held : drafted < held + line.quantity;
  });

/** Thousandths; nothing for what can't be read. */
function quantityTyped(text: string, { locale }: MoneyRules): number {
  try {
    return parseQuantity(text, locale);
  } catch {
    return 0;
  }
}

/** The draft with those lines below; a price that is to be set stays empty, so that it can't be forgotten. */
export function withBeyond(
  lines: readonly DraftLine[],
  beyond: readonly BeyondLine[],
  rules: MoneyRules,
): DraftLine[] {
  const filled = lines.filter((line) => !isBlank(line, rules));
  const highest = filled.reduce((most, { key }) => Math.max(most, key), 0);
  const missing = missingBeyond(filled, beyond, rules);
  const added = draftOf(
    missing.map(({ line }) => line),
    rules,
  ).map((line, index) => ({
    ...line,
    key: highest + 1 + index,
    unitPrice: missing[index]?.priceToSet ? '' : line.unitPrice,
  }));
  return [...filled, ...added];
}
