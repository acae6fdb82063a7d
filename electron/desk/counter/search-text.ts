import { eq } from 'drizzle-orm';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { searchTextOf } from '../../../db/queries/search-text.ts';
import { job as jobTable } from '../../../db/schema/index.ts';
import type { Customer, Machine } from '../../../shared/contract/counter/index.ts';
import { jobCode } from '../../../shared/contract/ids.ts';
import { MACHINE_KIND_LABELS } from '../../../shared/work/vocabulary.ts';
import { found } from '../refuse.ts';
import type { Writing } from '../writing.ts';

/** What a job is found by, wherever somebody searches. */
export const jobSearchText = (
  number: number,
  customer: Customer,
  machine: Machine,
  complaint: string,
): string =>
  searchTextOf(
    jobCode(number),
    String(number),
    customer.name,
    customer.phone,
    customer.phoneInternational,
    MACHINE_KIND_LABELS[machine.kind],
    machine.make,
    machine.model,
    machine.serial,
    machine.engine.make,
    machine.engine.model,
    machine.engine.serial,
    complaint,
  );

/** After something that a job is found by was mended. */
export function findJobAnew({ store }: Writing, jobId: string): void {
  const job = found(dossierOf(store, jobId), 'job');
  const searchText = jobSearchText(job.number, job.customer, job.machineDetails, job.complaint);
  store.update(jobTable).set({ searchText }).where(eq(jobTable.id, jobId)).run();
}
