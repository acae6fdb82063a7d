/**
 * Which job has which part promised. Parts that took each other's place count as one: a job may have the
 * former one where the current one is out. What is promised is there: a promise that the shelf can't keep
 * is taken back, from the job that was last. Quantities are whole thousandths.
 */

export interface PromiseShelf {
  partId: string;
  onHand: number;
}

/** What a job still needs of these parts. */
export interface Claim {
  jobId: string;
  /** Needed and not issued yet; never below zero. */
  open: number;
  /** The parts that its lines name, those first. */
  named: readonly string[];
  /** What is promised to it by now, by part. */
  promised: ReadonlyMap<string, number>;
}

export interface PromiseChange {
  partId: string;
  jobId: string;
  /** Promised, or taken back below zero. */
  change: number;
}

const sum = (numbers: Iterable<number>): number => [...numbers].reduce((a, b) => a + b, 0);

/**
 * What has to be promised and taken back so that each job has what it may have: no more than it needs, no
 * more than is there, and what is there goes to whoever comes first.
 * @param shelves in the order in which they are used up, where a line names none of them
 * @param claims those that come first at the head
 * @returns one change for a part and a job at most, takings-back first
 */
export function promiseChanges(
  shelves: readonly PromiseShelf[],
  claims: readonly Claim[],
): PromiseChange[] {
  const promised = claims.map((claim) => new Map(claim.promised));
  const of = (claim: number, partId: string) => promised[claim]?.get(partId) ?? 0;
  const onAll = (partId: string) => sum(claims.map((_, claim) => of(claim, partId)));
  const give = (claim: number, partId: string, change: number) =>
    promised[claim]?.set(partId, of(claim, partId) + change);
  /** The parts that a job is served from, in this order; what is too much goes back the other way round. */
  const preference = claims.map(({ named }) => [
    ...shelves.filter(({ partId }) => named.includes(partId)),
    ...shelves.filter(({ partId }) => !named.includes(partId)),
  ]);

  claims.forEach(({ open }, claim) => {
    for (const { partId } of preference[claim]?.toReversed() ?? []) {
      const over = sum(promised[claim]?.values() ?? []) - open;
      give(claim, partId, -Math.max(0, Math.min(over, of(claim, partId))));
    }
  });
  for (const { partId, onHand } of shelves)
    for (const claim of claims.keys().toArray().reverse()) {
      const over = onAll(partId) - Math.max(0, onHand);
      give(claim, partId, -Math.max(0, Math.min(over, of(claim, partId))));
    }
  claims.forEach(({ open }, claim) => {
    for (const { partId, onHand } of preference[claim] ?? []) {
      const lacking = open - sum(promised[claim]?.values() ?? []);
      give(claim, partId, Math.max(0, Math.min(lacking, onHand - onAll(partId))));
    }
  });

  return claims
    .flatMap(({ jobId, promised: before }, claim) =>
      shelves.map(({ partId }) => ({
        partId,
        jobId,
        change: of(claim, partId) - (before.get(partId) ?? 0),
      })),
    )
    .filter(({ change }) => change !== 0)
    .toSorted((a, b) => a.change - b.change);
}
