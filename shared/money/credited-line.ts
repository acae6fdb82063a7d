import type { DiscountRule } from './line.ts';

interface BilledLine {
  readonly description: string;
  readonly quantity: number;
  readonly unit: string;
  readonly unitPrice: number;
  readonly unitCost: number | null;
  readonly discount: DiscountRule | null;
  readonly discounted: number;
  readonly amount: number;
}

/**
 * A line of a bill as it stands on a credit note. Credited whole it is the line again, its cost too; a part of
 * it is one piece at that amount without a cost: the price was lowered, and nothing came back.
 * @param amount what is credited, minor units, of the same sign as the line's
 */
export const creditedLine = <Line extends BilledLine>(line: Line, amount: number): Line =>
  amount === line.amount
    ? line
    : {
        ...line,
        description: `Part of: ${line.description}`,
        quantity: 1_000,
        unit: '',
        unitPrice: Math.abs(amount),
        unitCost: null,
        discount: null,
        discounted: 0,
        amount,
      };
