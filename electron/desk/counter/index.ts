import { dossierOf, findJobs, jobIdByNumber } from '../../../db/queries/counter/jobs.ts';
import { shopOf } from '../../../db/queries/office.ts';
import { dateIn } from '../../../shared/work/calendar.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { amendIntake } from './amend-intake.ts';
import { customers } from './customers.ts';
import { day } from './day.ts';
import { handOver } from './hand-over.ts';
import { handoverMatters } from './handover-matters.ts';
import { leaving } from './leaving.ts';
import { machines } from './machines.ts';
import { moveJob } from './move.ts';
import { promises } from './promises.ts';
import { search } from './search.ts';
import { takeIn } from './take-in.ts';

const jobs = os.counter.jobs.handler(({ input, context: { store, now } }) =>
  findJobs(store.read, input, dateIn(shopOf(store.read).timeZone, now())),
);

const job = os.counter.job.handler(({ input, context: { store } }) => {
  const id =
    'id' in input
      ? input.id
      : found(jobIdByNumber(store.read, Number(input.code.slice(1))), `job ${input.code}`);
  return found(dossierOf(store.read, id), 'job');
});

export const counter = {
  ...customers,
  ...machines,
  ...promises,
  takeIn,
  amendIntake,
  jobs,
  job,
  moveJob,
  day,
  search,
  handoverMatters,
  leaving,
  handOver,
};
