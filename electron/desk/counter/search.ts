import { findCustomers } from '../../../db/queries/counter/customers.ts';
import { findJobs, findJobsOfPaper } from '../../../db/queries/counter/jobs.ts';
import { findMachines } from '../../../db/queries/counter/machines.ts';
import { findParts } from '../../../db/queries/parts/part.ts';
import { findEngineModelNames } from '../../../db/queries/specbook.ts';
import type { SearchHit } from '../../../shared/contract/counter/index.ts';
import { JOB_STATE_LABELS } from '../../../shared/work/counter/job-state.ts';
import { CYCLE_LABELS, MACHINE_KIND_LABELS } from '../../../shared/work/vocabulary.ts';
import { os } from '../implementer.ts';

/** As many of a kind as fit on a screen beside the others. */
const EACH = 8;

const joined = (...facts: string[]): string => facts.filter(Boolean).join(' · ');

export const search = os.counter.search.handler(({ input: { text }, context }) => {
  const store = context.store.read;
  const jobs = findJobs(store, { text, states: [], limit: EACH });
  const found = new Set(jobs.map(({ id }) => id));
  const hits: SearchHit[] = [
    ...jobs.map((job) => ({
      kind: 'job' as const,
      id: job.id,
      title: joined(job.code, job.customerName),
      detail: joined(job.machine, JOB_STATE_LABELS[job.state]),
      reference: job.code,
    })),
    ...findJobsOfPaper(store, text)
      .filter(({ job }) => !found.has(job.id))
      .map(({ paper, job }) => ({
        kind: 'job' as const,
        id: job.id,
        title: joined(job.code, job.customerName),
        detail: joined(paper, job.machine),
        reference: job.code,
      })),
    ...findCustomers(store, text, EACH).map((customer) => ({
      kind: 'customer' as const,
      id: customer.id,
      title: customer.name,
      detail: joined(customer.phone, customer.email),
      reference: '',
    })),
    ...findMachines(store, text, null, EACH).map((machine) => ({
      kind: 'machine' as const,
      id: machine.id,
      title: joined(
        [MACHINE_KIND_LABELS[machine.kind], machine.make, machine.model].filter(Boolean).join(' '),
        machine.serial,
      ),
      detail: machine.customerName,
      reference: machine.customerId,
    })),
    ...findParts(store, text, EACH).map((part) => ({
      kind: 'part' as const,
      id: part.id,
      title: joined(part.number, part.description),
      detail: joined(part.bin && `Bin ${part.bin}`, part.supplier),
      reference: '',
    })),
    ...findEngineModelNames(store, text, EACH).map((model) => ({
      kind: 'engine-model' as const,
      id: model.id,
      title: `${model.make} ${model.model}`,
      detail: CYCLE_LABELS[model.cycle],
      reference: '',
    })),
  ];
  return hits;
});
