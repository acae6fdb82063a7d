import type { Part } from '../../../shared/contract/parts/index.ts';
import type { Bundle } from '../../../shared/contract/till/index.ts';
import {
  editableMoney,
  markupPpm,
  parseMoney,
  priceAtMarkup,
} from '../../../shared/money/index.ts';
import { coreChargeWords } from '../../../shared/work/parts/cores.ts';
import { rateFor } from '../../../shared/work/till/clock-lines.ts';
import {
  type DraftLine,
  draftOf,
  emptyLine,
  isBlank,
  type MoneyRules,
  nextKey,
} from './draft-line.ts';

/** What is done to a typed line beside typing into its cells. */

const written = (minor: number, { currency, locale }: MoneyRules): string =>
  editableMoney(minor, currency, locale);

/** Typed over, a price is whoever typed it's own. */
export const withUnitPrice = (line: DraftLine, unitPrice: string): DraftLine => ({
  ...line,
  unitPrice,
  behind: { ...line.behind, priceFrom: 'typed' },
});

/** Labour of a kind of work at its rate; empty: at the shop's usual one. */
export const withWorkKind = (line: DraftLine, workKind: string, rules: MoneyRules): DraftLine => ({
  ...line,
  unitPrice: written(rateFor(workKind, rules), rules),
  behind: { ...line.behind, workKind, priceFrom: 'labour-rate' },
});

/** The line priced at its cost and a markup, in millionths of it. */
export function withMarkup(line: DraftLine, markupPpm: number, rules: MoneyRules): DraftLine {
  const { unitCost } = line.behind;
  if (unitCost === null) return line;
  return {
    ...line,
    unitPrice: written(priceAtMarkup(unitCost, markupPpm, rules.rounding), rules),
    behind: { ...line.behind, priceFrom: 'cost-and-markup' },
  };
}

/** What one costs the shop. Outside work that has no price of its own yet takes the shop's markup on it. */
export function withCost(line: DraftLine, unitCost: number | null, rules: MoneyRules): DraftLine {
  const costed = { ...line, behind: { ...line.behind, unitCost } };
  const follows = line.unitPrice.trim() === '' || line.behind.priceFrom === 'cost-and-markup';
  return line.kind === 'outside' && follows && unitCost !== null
    ? withMarkup(costed, rules.outsideMarkupPpm, rules)
    : costed;
}

/** How much more than its cost a line is priced at, in millionths of the cost; null while one is missing. */
export function markupOf(line: DraftLine, rules: MoneyRules): number | null {
  const { unitCost } = line.behind;
  if (unitCost === null) return null;
  try {
    const price = parseMoney(line.unitPrice, rules.currency, rules.locale);
    return markupPpm(price, unitCost, rules.rounding);
  } catch {
    return null;
  }
}

/** Supplies by the shop's rule, or at a price of their own again. */
export const withSuppliesRule = (line: DraftLine, byRule: boolean): DraftLine => ({
  ...line,
  quantity: '1',
  unitPrice: '',
  behind: { ...line.behind, discount: null, priceFrom: byRule ? 'supplies-rule' : 'typed' },
});

/** Lines with what a part is charged below it until its old one comes back. */
export function withCore(
  lines: readonly DraftLine[],
  below: DraftLine['key'],
  part: Pick<Part, 'number' | 'description' | 'coreCharge'>,
  rules: MoneyRules,
): DraftLine[] {
  if (part.coreCharge === 0) return [...lines];
  const core: DraftLine = {
    ...emptyLine(lines, 'core-charge', rules),
    description: coreChargeWords(part),
    unitPrice: written(part.coreCharge, rules),
  };
  return lines.flatMap((line) => (line.key === below ? [line, core] : [line]));
}

/** Lines with the credit for a core that came back below its charge. */
export const withCoreBack = (lines: readonly DraftLine[], charge: DraftLine): DraftLine[] => {
  const back: DraftLine = {
    ...charge,
    key: nextKey(lines),
    kind: 'core-credit',
    description: charge.description.replace(/^Core charge,/, 'Core came back,'),
  };
  return lines.flatMap((line) => (line.key === charge.key ? [line, back] : [line]));
};

/** Lines with those of a bundle below them; empty ones make way. */
export function withBundle(
  lines: readonly DraftLine[],
  bundle: Bundle,
  rules: MoneyRules,
): DraftLine[] {
  const filled = lines.filter((line) => !isBlank(line, rules));
  const first = nextKey(filled);
  const added = draftOf(
    bundle.lines.map((line) => ({ ...line, discounted: 0, amount: 0 })),
    rules,
  ).map((line, index) => ({ ...line, key: first + index }));
  return [...filled, ...added];
}
