import { eq, inArray } from 'drizzle-orm';
import { lineCreditsOf } from '../../../shared/money/index.ts';
import { creditNote, invoice } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/**
 * The invoices of which credit notes left no line: they make way for others, whatever they came to.
 * @param among ids of the invoices that are asked about; all of them without it
 */
export function creditedWhole(store: ReadStore, among?: readonly string[]): Set<string> {
  const notes = store
    .select({
      id: creditNote.invoiceId,
      billed: invoice.lines,
      lines: creditNote.lines,
      lineIndexes: creditNote.lineIndexes,
    })
    .from(creditNote)
    .innerJoin(invoice, eq(invoice.id, creditNote.invoiceId))
    .where(among === undefined ? undefined : inArray(creditNote.invoiceId, [...among]))
    .all();
  return new Set(
    [...Map.groupBy(notes, ({ id }) => id)].flatMap(([id, group]) => {
      const billed = group[0]?.billed ?? [];
      return lineCreditsOf(billed, group).wholeLines.length === billed.length ? [id] : [];
    }),
  );
}
