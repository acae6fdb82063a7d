import type { Invoice } from '../../../shared/contract/till/index.ts';
import { creditTotals } from '../../../shared/money/index.ts';

/** What is credited of a line: null is all that is left of it; a line that is not in here stays as it is. */
export type CreditChoice = ReadonlyMap<number, number | null>;

/** What is left of a line to credit, minor units; below zero for a core that came back. */
export const leftOf = ({ lines, lineCredits }: Invoice, line: number): number =>
  (lines[line]?.amount ?? 0) - (lineCredits[line] ?? 0);

export type CreditReading =
  | { ok: true; lines: { line: number; amount: number | null }[]; total: number; freed: number }
  | { ok: false; why: string };

/** What a choice of lines comes to with tax, and what of it is money that was paid already. */
export function readCredit(invoice: Invoice, choice: CreditChoice): CreditReading {
  if (choice.size === 0) return { ok: false, why: 'Choose what is credited.' };
  const asked = [...choice].map(([line, amount]) => {
    const left = leftOf(invoice, line);
    return { line, amount, of: amount === null ? left : amount * Math.sign(left), left };
  });
  const tooMuch = asked.find(({ of, left }) => Math.abs(of) > Math.abs(left));
  if (tooMuch !== undefined)
    return { ok: false, why: 'No more is credited of a line than is left of it.' };
  if (asked.some(({ amount }) => amount === 0))
    return { ok: false, why: 'A credit is more than zero.' };
  const now = invoice.lines.map((_, index) => asked.find(({ line }) => line === index)?.of ?? 0);
  const { total } = creditTotals(invoice, invoice.lineCredits, now);
  return {
    ok: true,
    lines: asked.map(({ line, amount, left }) => ({
      line,
      amount: amount === Math.abs(left) ? null : amount,
    })),
    total,
    freed: Math.max(0, total - Math.max(0, invoice.open)),
  };
}
