/** When missing parts should be there, by what is on order. Quantities are whole thousandths. */

export interface MissingAtJob {
  jobId: string;
  missing: number;
}

/** What a supplier owes on a line of an order. */
export interface OnOrder {
  /** The job that it was ordered for alone, or null. */
  jobId: string | null;
  quantity: number;
  /** ISO date, or null when nobody knows. */
  expectedOn: string | null;
}

export interface Expected {
  /** How much of what is missing is on order for the job. */
  onOrder: number;
  /** The day by which all that is missing should be there; null when not all of it is on order, or has no date. */
  expectedOn: string | null;
}

/** Later than every date; a line without one comes after all others. */
const SOME_DAY = '9999-99-99';
const byDate = (a: OnOrder, b: OnOrder) =>
  (a.expectedOn ?? SOME_DAY) < (b.expectedOn ?? SOME_DAY) ? -1 : 1;

/**
 * Shares out what is on order of a part: what was ordered for a job goes to that job, all else to whoever
 * comes first.
 * @param jobs those that come first at the head
 */
export function expectedParts(
  jobs: readonly MissingAtJob[],
  orders: readonly OnOrder[],
): Map<string, Expected> {
  const lines = orders.toSorted(byDate).map((order) => ({ ...order, left: order.quantity }));
  const take = (jobId: string | null, wanted: number) => {
    const taken: OnOrder[] = [];
    let lacking = wanted;
    for (const line of lines.filter((each) => each.jobId === jobId && each.left > 0)) {
      const quantity = Math.min(lacking, line.left);
      if (quantity === 0) break;
      line.left -= quantity;
      lacking -= quantity;
      taken.push({ ...line, quantity });
    }
    return taken;
  };
  const total = (taken: readonly OnOrder[]) =>
    taken.reduce((sum, { quantity }) => sum + quantity, 0);

  const own = jobs.map(({ jobId, missing }) => take(jobId, missing));
  return new Map(
    jobs.map(({ jobId, missing }, place) => {
      const special = own[place] ?? [];
      const taken = [...special, ...take(null, missing - total(special))].toSorted(byDate);
      const onOrder = total(taken);
      return [
        jobId,
        { onOrder, expectedOn: onOrder < missing ? null : (taken.at(-1)?.expectedOn ?? null) },
      ];
    }),
  );
}
