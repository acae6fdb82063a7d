import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { partById } from '../../../db/queries/parts/part.ts';
import type { HAND_MOVEMENTS, Part } from '../../../shared/contract/parts/index.ts';
import { costAt, type StockEvent } from '../../../shared/work/stock-ledger.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { demandApproval } from '../till/limit/bill-ahead.ts';
import { write } from '../writing.ts';
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
    const { partId, kind, quantity, jobId, reason } = input;
    const part = found(partById(store, partId), 'part');
    if (quantity === 0 && kind !== 'counted')
      throw badInput([{ path: 'quantity', message: 'A quantity is more than zero.' }]);
    if ((kind === 'scrapped' || kind === 'counted') && reason === '') throw errors.REASON_WANTED();
    if ((kind === 'issued' || kind === 'returned') && jobId === null) throw errors.JOB_WANTED();
    if (jobId !== null) found(jobRowById(store, jobId), 'job');
    if (kind === 'issued' && jobId !== null)
      demandApproval(writing, jobId, errors, { part, quantity });
    const entry = { ...eventOf(kind, quantity, part), partId, jobId, reason };
    const { effect } = enterMovement(writing, entry);
    note({ part: partId, movement: kind, quantity: effect.quantity, job: jobId });
    return found(partById(store, partId), 'part');
  }),
);
