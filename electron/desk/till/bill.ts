import { partById } from '../../../db/queries/parts.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { Shop } from '../../../shared/contract/office.ts';
import type { Line, LineInput, Totals } from '../../../shared/contract/till.ts';
import { billTotals, lineAmount } from '../../../shared/money/index.ts';
import { badInput, found } from '../refuse.ts';

/**
 * Lines as they are written, with their amounts, and what they come to.
 * @throws the declared BAD_INPUT when a bill comes to more than money here can hold
 */
export function billOf(
  store: ReadStore,
  shop: Shop,
  inputs: readonly LineInput[],
): { lines: Line[]; totals: Totals } {
  const lines = inputs.map(
    (line): Line => ({
      ...line,
      partNumber:
        line.partId === null ? '' : found(partById(store, line.partId), 'part on a line').number,
      amount: amountOf(line, shop),
    }),
  );
  return {
    lines,
    totals: billTotals(lines, shop.taxes, { rounding: shop.rounding, basis: shop.taxBasis }),
  };
}

function amountOf({ quantity, unitPrice }: LineInput, { rounding }: Shop): number {
  try {
    return lineAmount({ quantity, unitPrice }, rounding);
  } catch (error) {
    if (error instanceof RangeError) throw badInput([{ path: 'lines', message: error.message }]);
    throw error;
  }
}
