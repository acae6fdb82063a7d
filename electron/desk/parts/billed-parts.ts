import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { jobsWithBilledParts, notIssued } from '../../../db/queries/parts/billed-parts.ts';
import { partFromElsewhere } from '../../../db/schema/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { enterMovement } from './ledger.ts';
import { markPartsToIssue } from './parts-to-issue.ts';
import { settlePromises } from './promises.ts';

/**
 * Takes off the shelf what is billed on a job and has not left it, as far as it is there for that job.
 * @param partIds of these parts of the bill only; null for all
 * @returns what was taken, by part of the bill, in words for the journal
 */
export function issueWhatIsBilled(
  writing: Writing,
  jobId: string,
  partIds: readonly string[] | null,
): string[] {
  const wanted = notIssued(writing.store, jobId).filter(
    ({ part, onShelf }) => onShelf > 0 && (partIds === null || partIds.includes(part.id)),
  );
  for (const { takes } of wanted)
    for (const { partId, quantity } of takes)
      enterMovement(writing, { kind: 'issued', partId, jobId, quantity, reason: 'As billed' });
  return wanted.map(
    ({ part, onShelf }) => `${formatQuantity(onShelf, 'en')} ${part.unit} ${part.number}`,
  );
}

const issueBilled = os.parts.issueBilled.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { jobId, partIds } = input;
    found(jobRowById(writing.store, jobId), 'job');
    const issued = issueWhatIsBilled(writing, jobId, partIds);
    if (issued.length === 0) throw errors.NOTHING_TO_ISSUE();
    writing.note({ job: jobId, issued: issued.join(', ') });
    return notIssued(writing.store, jobId);
  }),
);

const fromElsewhere = os.parts.fromElsewhere.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, staff, at, newId, note } = writing;
    const { jobId, partId, quantity, reason } = input;
    found(jobRowById(store, jobId), 'job');
    const open = notIssued(store, jobId).find(({ part }) => part.id === partId)?.quantity ?? 0;
    if (quantity > open) throw errors.MORE_THAN_BILLED({ data: { open } });
    store
      .insert(partFromElsewhere)
      .values({ id: newId(), jobId, partId, quantity, reason, by: staff.id, at })
      .run();
    settlePromises(writing, partId);
    markPartsToIssue(writing, jobId);
    note({ job: jobId, part: partId, quantity, reason });
    return notIssued(store, jobId);
  }),
);

export const billedParts = {
  billedNotIssued: os.parts.billedNotIssued.handler(({ context: { store } }) =>
    jobsWithBilledParts(store.read),
  ),
  notIssuedOf: os.parts.notIssuedOf.handler(({ input: { jobId, lines }, context: { store } }) => {
    found(jobRowById(store.read, jobId), 'job');
    const billed = new Map<string, number>();
    for (const { partId, quantity } of lines)
      billed.set(partId, quantity + (billed.get(partId) ?? 0));
    return notIssued(store.read, jobId, billed);
  }),
  issueBilled,
  fromElsewhere,
};
