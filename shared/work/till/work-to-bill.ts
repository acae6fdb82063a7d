/** What of a job's estimates is to be done: the option that was taken, less the lines that were declined. */

interface Option {
  readonly key: string;
  readonly label: string;
  readonly lines: readonly unknown[];
  readonly totals: { readonly total: number };
}

interface Approval {
  readonly estimateId: string;
  readonly option: string;
  readonly declined: readonly { readonly line: number }[];
}

/** Both oldest first. */
interface Job {
  readonly estimates: readonly { readonly id: string; readonly options: readonly Option[] }[];
  readonly approvals: readonly Approval[];
}

export interface WorkToBill<Of extends Job> {
  readonly estimate: Of['estimates'][number];
  readonly option: Of['estimates'][number]['options'][number];
  /** Of the option, in its order, those that were not declined. */
  readonly lines: Of['estimates'][number]['options'][number]['lines'];
  /** The approval of this very estimate; null while nobody approved it. */
  readonly approval: Of['approvals'][number] | null;
}

/**
 * What would be billed if the job were done as it is estimated: of the newest estimate the option that the
 * customer took, less what they declined. Where they have not chosen in it yet, the option by the name of
 * the one that they took before; else the least of them, since the bill comes to that whatever they take.
 * @returns null for a job without an estimate
 */
export function workToBill<Of extends Job>({ estimates, approvals }: Of): WorkToBill<Of> | null {
  const estimate = estimates.at(-1);
  if (estimate === undefined) return null;
  const last = approvals.at(-1);
  const approval = last?.estimateId === estimate.id ? last : null;
  const option = approval === null ? expected(estimate.options) : taken(estimate.options, approval);
  if (option === undefined) return null;
  const declined = new Set(approval?.declined.map(({ line }) => line));
  const lines = option.lines.filter((_, index) => !declined.has(index));
  return { estimate, option, lines, approval };

  function expected(options: readonly Option[]): Option | undefined {
    const before = estimates.find(({ id }) => id === last?.estimateId);
    const label = last && before && taken(before.options, last)?.label;
    return (
      options.find((option) => option.label === label) ??
      options.toSorted((a, b) => a.totals.total - b.totals.total)[0]
    );
  }
}

const taken = (options: readonly Option[], { option }: Approval): Option | undefined =>
  options.find(({ key }) => key === option);
