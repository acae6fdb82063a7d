/** What a credit note takes off lines: its amounts, and which line of the invoice each of them is of. */
export interface CreditedLines {
  readonly lines: readonly { readonly amount: number }[];
  /** Places on the invoice, from 0, beside `lines`. */
  readonly lineIndexes: readonly number[];
}

/**
 * What credit notes took off each line of an invoice, minor units, and the places of the lines that they took
 * off whole. A line of nothing is off once a note names it.
 */
export function lineCreditsOf(
  billed: readonly { readonly amount: number }[],
  notes: readonly CreditedLines[],
): { lineCredits: number[]; wholeLines: number[] } {
  const credited = new Map<number, number>();
  for (const { lines, lineIndexes } of notes)
    for (const [index, { amount }] of lines.entries()) {
      const place = lineIndexes[index];
      if (place !== undefined) credited.set(place, (credited.get(place) ?? 0) + amount);
    }
  return {
    lineCredits: billed.map((_line, place) => credited.get(place) ?? 0),
    wholeLines: billed.flatMap(({ amount }, place) =>
      credited.get(place) === amount ? [place] : [],
    ),
  };
}
