import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { accountOf } from '../../../db/queries/till/account.ts';
import { approval as approvalTable } from '../../../db/schema/index.ts';
import type { DeclinedLine, EstimateOption } from '../../../shared/contract/till/index.ts';
import { canMove } from '../../../shared/work/counter/job-state.ts';
import { moveTo } from '../counter/move.ts';
import { os } from '../implementer.ts';
import { signed } from '../papers/head.ts';
import { settleJob } from '../parts/promises.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';
import { openAccount } from './open-account.ts';

/** The lines that the customer does not take, in the option's order; each is named once. */
function declinedLines({ lines }: EstimateOption, places: readonly number[]): DeclinedLine[] {
  const unknown = places.findIndex((place) => place >= lines.length);
  if (unknown >= 0)
    throw badInput([
      {
        path: `declined.${unknown}`,
        message: `The option has ${lines.length} lines. Name those by their places, from 0.`,
      },
    ]);
  return lines.flatMap(({ description, amount }, line) =>
    places.includes(line) ? [{ line, description, amount }] : [],
  );
}

export const approve = os.till.approve.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, staff, at, today, newId, note } = writing;
    const { jobId, estimateId, how, approvedBy, amount, signature } = input;
    const account = openAccount(writing, jobId, errors);
    const estimate = found(
      account.estimates.find(({ id }) => id === estimateId),
      'estimate of this job',
    );
    const { validUntil, options } = estimate;
    if (estimate.revision !== account.estimates.length) throw errors.ESTIMATE_SUPERSEDED();
    if (validUntil !== null && today > validUntil)
      throw errors.ESTIMATE_EXPIRED({ data: { validUntil } });
    const option =
      input.option === null && options.length === 1
        ? options[0]
        : options.find(({ key }) => key === input.option);
    if (option === undefined)
      throw errors.OPTION_WANTED({
        data: { options: options.map(({ key, label }) => ({ key, label })) },
      });
    const declined = declinedLines(option, input.declined);
    if (declined.length === option.lines.length) throw errors.NOTHING_TAKEN();
    if (how === 'in-person' && signature === null) throw errors.SIGNATURE_WANTED();
    store
      .insert(approvalTable)
      .values({
        id: newId(),
        jobId,
        estimateId,
        how,
        approvedBy,
        amount,
        option: option.key,
        declined,
        note: input.note,
        signature: signature === null ? null : signed(signature, at),
        by: staff.id,
        at,
      })
      .run();
    const state = found(jobRowById(store, jobId), 'job').state;
    if (canMove(state, 'go-ahead')) moveTo(writing, jobId, 'go-ahead', `By ${approvedBy}`);
    settleJob(writing, jobId);
    note({
      job: jobId,
      estimate: estimate.number,
      option: option.label,
      approvedBy,
      how,
      amount,
      declined: declined.map(({ description }) => description).join('; '),
    });
    return found(accountOf(store, jobId), 'job');
  }),
);
