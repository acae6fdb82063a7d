import { openJobs } from '../../../../db/queries/counter/jobs.ts';
import { jobPartsOf } from '../../../../db/queries/parts/job-parts.ts';
import { openNeeds } from '../../../../db/queries/parts/needs.ts';
import { lowShelves } from '../../../../db/queries/parts/reports.ts';
import type { ReadStore } from '../../../../db/store.ts';
import type { ReportTable } from '../../../../shared/contract/till/index.ts';
import { available } from '../../../../shared/work/parts/stock-ledger.ts';
import { reportTable } from '../../till/books/reports/table.ts';

/** What jobs miss, and which shelves are low, as it stands now. */
export function shortageTables(store: ReadStore): ReportTable[] {
  const needing = new Set(openNeeds(store).map(({ jobId }) => jobId));
  const missing = openJobs(store)
    .filter(({ id }) => needing.has(id))
    .flatMap(({ id, code, customerName }) =>
      (jobPartsOf(store, id)?.parts ?? [])
        .filter((part) => part.missing > 0)
        .map((part) => ({ ...part, code, customerName })),
    );
  return [
    reportTable(
      {
        key: 'jobs',
        heading: 'Missing for jobs',
        note: 'Approved, and neither issued nor promised.',
      },
      [
        { label: 'Job', as: 'job', of: ({ code }) => code },
        { label: 'Customer', as: 'text', of: ({ customerName }) => customerName },
        { label: 'Part', as: 'text', of: ({ part }) => part.number },
        { label: 'Description', as: 'text', of: ({ part }) => part.description },
        { label: 'Missing', as: 'quantity', of: (row) => row.missing },
        { label: 'Unit', as: 'text', of: ({ part }) => part.unit },
        { label: 'On order for it', as: 'quantity', of: ({ onOrder }) => onOrder },
        { label: 'Expected', as: 'date', of: ({ expectedOn }) => expectedOn },
      ],
      missing,
    ),
    reportTable(
      {
        key: 'shelves',
        heading: 'Low shelves',
        note: 'No more free than the reorder point.',
      },
      [
        { label: 'Part', as: 'text', of: ({ number }) => number },
        { label: 'Description', as: 'text', of: ({ description }) => description },
        { label: 'Bin', as: 'text', of: ({ bin }) => bin },
        { label: 'Supplier', as: 'text', of: ({ supplier }) => supplier },
        { label: 'On hand', as: 'quantity', of: ({ onHand }) => onHand },
        { label: 'Free', as: 'quantity', of: available },
        { label: 'Reorder at', as: 'quantity', of: ({ reorderPoint }) => reorderPoint },
        { label: 'On order', as: 'quantity', of: ({ onOrder }) => onOrder },
        { label: 'Unit', as: 'text', of: ({ unit }) => unit },
      ],
      lowShelves(store),
    ),
  ];
}
