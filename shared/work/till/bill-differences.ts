/** How a bill differs from what the customer approved, line by line. */

interface ComparedLine {
  readonly kind: string;
  readonly description: string;
  readonly partId: string | null;
  readonly quantity: number;
  readonly amount: number;
}

export interface BillDifference {
  readonly description: string;
  /** What was approved for it, minor units; null for a line that nobody approved. */
  readonly approved: number | null;
  /** What is billed for it; null for a line that was left out. */
  readonly billed: number | null;
}

/** One thing, whatever it costs: the same part, or a line of one kind by the same words. */
const same = (one: ComparedLine, other: ComparedLine): boolean =>
  one.kind === other.kind &&
  (one.partId !== null && other.partId !== null
    ? one.partId === other.partId
    : one.description === other.description);

/**
 * The lines that are billed otherwise than they were approved: changed ones first, then those left out, then
 * those that came on top; each in its order. Empty when the bill is what was approved.
 */
export function billDifferences(
  approved: readonly ComparedLine[],
  billed: readonly ComparedLine[],
): BillDifference[] {
  const left = [...billed];
  const take = (line: ComparedLine, fits: (other: ComparedLine) => boolean) => {
    const place = left.findIndex((other) => same(line, other) && fits(other));
    return place < 0 ? undefined : left.splice(place, 1)[0];
  };
  // The very lines first: of two by the same words the changed one must not take the other's place.
  const pairs = approved
    .map((line) => ({ line, match: take(line, ({ amount }) => amount === line.amount) }))
    .map(({ line, match }) => ({ line, match: match ?? take(line, () => true) }));
  return [
    ...pairs.flatMap(({ line, match }) =>
      match === undefined || (line.amount === match.amount && line.quantity === match.quantity)
        ? []
        : [{ description: match.description, approved: line.amount, billed: match.amount }],
    ),
    ...pairs.flatMap(({ line, match }) =>
      match === undefined
        ? [{ description: line.description, approved: line.amount, billed: null }]
        : [],
    ),
    ...left.map((line) => ({
      description: line.description,
      approved: null,
      billed: line.amount,
    })),
  ];
}
