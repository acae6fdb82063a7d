import type { BillAhead } from '../../../shared/contract/till/index.ts';
import { atLeast, withoutPrice } from '../../../shared/work/till/at-least.ts';

type Money = (minor: number) => string;

/** Nobody has said yes to anything yet: that is no alarm, but the customer's turn. */
export const isFirstAsking = ({ limit, estimate, beyond }: BillAhead): boolean =>
  limit === 0 && estimate !== null && beyond.length === 0;

/** What the bill is heading to against what is approved, in a sentence. */
export function stoppedWords(ahead: BillAhead, money: Money): string {
  const { total, approved, limit, over, unpriced } = ahead;
  const least = (minor: number) => atLeast(money(minor), unpriced.length);
  if (isFirstAsking(ahead))
    return `The estimate is not approved yet: the bill would come to ${money(total)}`;
  const allowed =
    limit === 0
      ? 'nothing is approved'
      : limit === approved
        ? `${money(approved)} is approved`
        : `${money(approved)} is approved and ${money(limit)} let pass`;
  const missing = unpriced.length === 0 ? '' : `; ${withoutPrice(unpriced.length)}`;
  return `The bill is heading to ${least(total)}, and ${allowed}: ${least(over)} too much${missing}`;
}

interface Facts {
  machine: string;
  shopName: string;
  /** Of the newest estimate. */
  options?: readonly { readonly label: string; readonly totals: { readonly total: number } }[];
}

/** What is read out or written to the customer: why, how much, and what is asked of them. */
export function whatToSay(
  { total, approved, beyond, unpriced }: BillAhead,
  { machine, shopName, options = [] }: Facts,
  money: Money,
): string {
  const lines = beyond.map(({ line, priceToSet }) =>
    priceToSet
      ? `- ${line.description}: price to be set`
      : `- ${line.description}: ${money(line.amount)}`,
  );
  if (approved === 0 && beyond.length === 0 && options.length > 1)
    return [
      `${shopName}, about your ${machine}:`,
      'You can choose what we do:',
      ...options.map((option) => `- ${option.label}: ${money(option.totals.total)}`),
      'Which do you take, and up to what amount may the bill come?',
    ].join('\n');
  return [
    `${shopName}, about your ${machine}:`,
    ...(lines.length === 0 ? [] : ['We found more that it needs, before tax:', ...lines]),
    approved === 0
      ? `All of it comes to ${atLeast(money(total), unpriced.length)}.`
      : `All of it comes to ${atLeast(money(total), unpriced.length)}; you approved up to ${money(approved)}.`,
    'We go on once you say yes. Up to what amount may the bill come?',
  ].join('\n');
}
