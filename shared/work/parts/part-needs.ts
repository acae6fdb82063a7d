/** What a job needs of which parts, by what its customer approved. Quantities are whole thousandths. */

interface Line {
  readonly partId: string | null;
  readonly quantity: number;
}

export interface ApprovedWork {
  /** The lines of the option that was taken, in its order. */
  readonly lines: readonly Line[];
  readonly declined: readonly { readonly line: number }[];
}

/** By part; lines of one part are added up, declined ones left out. */
export function approvedParts({ lines, declined }: ApprovedWork): Map<string, number> {
  const without = new Set(declined.map(({ line }) => line));
  const needed = new Map<string, number>();
  lines.forEach(({ partId, quantity }, place) => {
    if (partId !== null && !without.has(place))
      needed.set(partId, (needed.get(partId) ?? 0) + quantity);
  });
  return needed;
}

/**
 * What is needed of each part: what the customer approved, or what was ordered for this job alone, if that
 * is more.
 */
export function neededParts(
  approved: ReadonlyMap<string, number>,
  special: ReadonlyMap<string, number>,
): Map<string, number> {
  const needed = new Map(approved);
  for (const [partId, quantity] of special)
    needed.set(partId, Math.max(quantity, needed.get(partId) ?? 0));
  return needed;
}
