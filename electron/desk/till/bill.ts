import { partById } from '../../../db/queries/parts/part.ts';
import type { ReadStore } from '../../../db/store.ts';
import type {
  BillTerms,
  Discount,
  Line,
  LineInput,
  Totals,
} from '../../../shared/contract/till/index.ts';
import { drawUp } from '../../../shared/money/index.ts';
import { badInput, found } from '../refuse.ts';

/**
 * Lines as they are written, with their amounts, and what they come to on a customer's terms.
 * @param field where a refusal says that the lines stand
 * @throws the declared BAD_INPUT when a bill comes to more than money here can hold
 */
export function billOf(
  store: ReadStore,
  terms: BillTerms,
  { lines, discount }: { lines: readonly LineInput[]; discount: Discount | null },
  field = 'lines',
): { lines: Line[]; totals: Totals } {
  const numbered = lines.map((line) => ({
    ...line,
    partNumber:
      line.partId === null ? '' : found(partById(store, line.partId), 'part on a line').number,
  }));
  try {
    return drawUp({ lines: numbered, discount }, terms);
  } catch (error) {
    if (error instanceof RangeError) throw badInput([{ path: field, message: error.message }]);
    throw error;
  }
}
