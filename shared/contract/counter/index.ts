import { amendments } from './amendments.ts';
import { handover } from './handover.ts';
import { intake } from './intake.ts';
import { jobs } from './jobs.ts';
import { records } from './records.ts';

export { Customer } from './customer.ts';
export { LeavingWords } from './handover.ts';
export { TakeIn } from './intake.ts';
export { JobCard, JobDossier, MovedPromise, PaperCard } from './job.ts';
export { SearchHit } from './jobs.ts';
export { Machine } from './machine.ts';

/** The counter: customers, machines, intake, the day, search, handover. */
export const counter = { ...records, ...intake, ...jobs, ...handover, ...amendments };
