import { jobRowById, jobsOfMachine } from '../../../db/queries/counter/jobs.ts';
import { shopOf } from '../../../db/queries/office.ts';
import { warrantyWorkOf } from '../../../db/queries/till/warranty.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';

const ofJob = os.till.warranty.handler(({ input: { jobId }, context }) => {
  const store = context.store.read;
  const job = found(jobRowById(store, jobId), 'job');
  return {
    earlier: jobsOfMachine(store, job.machineId).filter(
      ({ id, state }) => id !== jobId && state === 'handed-over',
    ),
    work: warrantyWorkOf(store, jobId, shopOf(store).rounding),
  };
});

export const warranty = { warranty: ofJob };
