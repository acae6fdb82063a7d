import type { Proposal } from '../../shared/contract/bench/index.ts';
import { editableMoney, editableQuantity } from '../../shared/money/index.ts';
import { type DraftLine, emptyLine, isBlank, type MoneyRules } from '../till/lines/draft-line.ts';

const standsIn = (lines: readonly DraftLine[], { partId, description }: Proposal): boolean =>
  lines.some((line) =>
    partId === null ? line.description.trim() === description : line.partId === partId,
  );

/** The proposals that an estimate has no line for yet: by their part, else by their words. */
export const missingFrom = (lines: readonly DraftLine[], proposals: readonly Proposal[]) =>
  proposals.filter((proposal) => !standsIn(lines, proposal));

/**
 * An estimate's lines with the proposals that it lacks below them. A price that is to be set stays empty,
 * so that the estimate can't be written with nothing for it.
 */
export function withProposals(
  lines: readonly DraftLine[],
  proposals: readonly Proposal[],
  rules: MoneyRules,
): DraftLine[] {
  const filled = lines.filter((line) => !isBlank(line, rules));
  const all = [...filled];
  for (const proposal of missingFrom(filled, proposals)) {
    const empty = emptyLine(all, proposal.kind, rules);
    all.push({
      ...empty,
      description: proposal.description,
      partId: proposal.partId,
      partNumber: proposal.partNumber,
      quantity: editableQuantity(proposal.quantity, rules.locale),
      unit: proposal.unit,
      unitPrice: proposal.priceToSet
        ? ''
        : editableMoney(proposal.unitPrice, rules.currency, rules.locale),
      behind: {
        ...empty.behind,
        unitCost: proposal.unitCost ?? empty.behind.unitCost,
        priceFrom: proposal.priceFrom,
      },
    });
  }
  return all;
}
