import type { BillAhead } from '../../../shared/contract/till/index.ts';

type Money = (minor: number) => string;

/** What the bill is heading to against what is approved, in a sentence. */
export function stoppedWords({ total, approved, limit, over, beyond }: BillAhead, money: Money) {
  const more = beyond.some(({ priceToSet }) => priceToSet) ? ' or more' : '';
  const allowed =
    limit === 0
      ? 'nothing is approved'
      : limit === approved
        ? `${money(approved)} is approved`
        : `${money(approved)} is approved and ${money(limit)} let pass`;
  return `The bill is heading to ${money(total)}${more}, and ${allowed}: ${money(over)} too much`;
}

/** What is read out or written to the customer: why, how much, and what is asked of them. */
export function whatToSay(
  { total, approved, beyond }: BillAhead,
  { machine, shopName }: { machine: string; shopName: string },
  money: Money,
): string {
  const lines = beyond.map(({ line, priceToSet }) =>
    priceToSet
      ? `- ${line.description}: price to be set`
      : `- ${line.description}: ${money(line.amount)}`,
  );
  return [
    `${shopName}, about your ${machine}:`,
    ...(lines.length === 0 ? [] : ['We found more that it needs, before tax:', ...lines]),
    approved === 0
      ? `All of it comes to ${money(total)}.`
      : `All of it comes to ${money(total)}; you approved up to ${money(approved)}.`,
    'We go on once you say yes. Up to what amount may the bill come?',
  ].join('\n');
}
