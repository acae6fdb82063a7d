import { eq } from 'drizzle-orm';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { intakeAmendment, job as jobTable } from '../../../db/schema/index.ts';
import type { IntakeFacts } from '../../../shared/work/counter/intake-facts.ts';
import { changedFacts } from '../changed-facts.ts';
import { os } from '../implementer.ts';
import { signed } from '../papers/head.ts';
import { claimTicketAnew, tagAnew } from '../papers/intake-anew.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';
import { findJobAnew } from './search-text.ts';

const intakeFacts = (of: IntakeFacts): IntakeFacts => ({
  complaint: of.complaint,
  symptoms: of.symptoms,
  condition: of.condition,
  leftWith: of.leftWith,
  fuel: of.fuel,
  lastService: of.lastService,
  engineHours: of.engineHours,
  reachBy: of.reachBy,
});

export const amendIntake = os.counter.amendIntake.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, staff, at, newId, note } = writing;
    const { jobId, reason } = input;
    const before = found(dossierOf(store, jobId), 'job');
    if (before.state === 'handed-over') throw errors.JOB_CLOSED();
    const former = intakeFacts(before);
    const facts = intakeFacts(input);
    const changes = changedFacts(former, facts);
    store.update(jobTable).set(facts).where(eq(jobTable.id, jobId)).run();
    findJobAnew(writing, jobId);

    const job = found(dossierOf(store, jobId), 'job');
    const signature = input.signature && signed(input.signature, at);
    const claimTicket = claimTicketAnew(writing, job, { signature, reason });
    // A serial number that was mended since is a reason for a new ticket, too.
    if (Object.keys(changes).length === 0 && claimTicket === null) throw errors.NOTHING_CHANGED();
    const tag = tagAnew(writing, job, reason);
    store
      .insert(intakeAmendment)
      .values({
        id: newId(),
        jobId,
        reason,
        former,
        paperId: claimTicket?.id ?? null,
        by: staff.id,
        at,
      })
      .run();
    note({
      job: jobId,
      reason,
      claimTicket: claimTicket?.number ?? null,
      tag: tag?.number ?? null,
      ...changes,
    });
    return { job: found(dossierOf(store, jobId), 'job'), claimTicket, tag };
  }),
);
