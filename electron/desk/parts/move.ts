import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { partById } from '../../../db/queries/parts/part.ts';
import type { HAND_MOVEMENTS, Part } from '../../../shared/contract/parts/index.ts';
import { costAt, type StockEvent } from '../../../shared/work/parts/stock-ledger.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';
import { demandIssued, issueToJob } from './issue.ts';
import { enterMovement } from './ledger.ts';

type HandMovement = (typeof HAND_MOVEMENTS)[number];

/** What a person entered, as the ledger wants it; a count says what is there. */
function eventOf(kind: HandMovement, quantity: number, part: Part): StockEvent {
  switch (kind) {
    case 'received':
      return { kind, quantity, cost: costAt(part.cost, quantity) };
    case 'counted':
      return { kind, difference: quantity - part.onHand };
    default:
      return { kind, quantity };
  }
}

export const move = os.parts.move.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, note } = writing;
    const { partId, kind, quantity, jobId, reason, belowNothing } = input;
    const part = found(partById(store, partId), 'part');
    if (quantity === 0 && kind !== 'counted')
      throw badInput([{ path: 'quantity', message: 'A quantity is more than zero.' }]);
    if ((kind === 'scrapped' || kind === 'counted') && reason === '') throw errors.REASON_WANTED();
    if ((kind === 'issued' || kind === 'returned') && jobId === null) throw errors.JOB_WANTED();
    if (jobId !== null) found(jobRowById(store, jobId), 'job');
    if (kind === 'returned' && jobId !== null)
      demandIssued(writing, { partId, jobId, quantity }, errors);
    const { effect } =
      kind === 'issued' && jobId !== null
        ? issueToJob(writing, { part, jobId, quantity, reason, belowNothing }, errors)
        : enterMovement(writing, { ...eventOf(kind, quantity, part), partId, jobId, reason });
    note({ part: partId, movement: kind, quantity: effect.quantity, job: jobId });
    return found(partById(store, partId), 'part');
  }),
);

export const putRight = os.parts.putRight.handler(({ input, context, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, note } = writing;
    const { partId, difference, reason } = input;
    const part = found(partById(store, partId), 'part');
    enterMovement(writing, { kind: 'adjusted', partId, difference, reason });
    note({ part: partId, number: part.number, quantity: difference, reason });
    return found(partById(store, partId), 'part');
  }),
);
