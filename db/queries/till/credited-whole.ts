import { eq } from 'drizzle-orm';
import { creditNote, invoice } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/** The invoices of which credit notes left no line: they make way for others, whatever they came to. */
export function creditedWhole(store: ReadStore): Set<string> {
  const notes = store
    .select({
      id: creditNote.invoiceId,
      billed: invoice.lines,
      lines: creditNote.lines,
      places: creditNote.lineIndexes,
    })
    .from(creditNote)
    .innerJoin(invoice, eq(invoice.id, creditNote.invoiceId))
    .all();
  return new Set(
    [...Map.groupBy(notes, ({ id }) => id)].flatMap(([id, group]) => {
      const credited = new Map<number, number>();
      for (const { lines, places } of group)
        for (const [index, { amount }] of lines.entries()) {
          const place = places[index];
          if (place !== undefined) credited.set(place, (credited.get(place) ?? 0) + amount);
        }
      const whole = group[0]?.billed.every(({ amount }, place) => credited.get(place) === amount);
      return whole ? [id] : [];
    }),
  );
}
