import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { partById } from '../../../db/queries/parts/part.ts';
import { stockMovement } from '../../../db/schema/index.ts';
import type { Movement } from '../../../shared/contract/parts/index.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';

/** What a movement adds to the shelf, in thousandths; a count says what is there. */
const signedQuantity = (kind: Movement['kind'], quantity: number, onHand: number): number => {
  if (kind === 'counted') return quantity - onHand;
  return kind === 'received' || kind === 'returned' ? quantity : -quantity;
};

export const move = os.parts.move.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, newId, note }) => {
    const { partId, kind, quantity, jobId, reason } = input;
    const { onHand } = found(partById(store, partId), 'part');
    if (quantity === 0 && kind !== 'counted')
      throw badInput([{ path: 'quantity', message: 'A quantity is more than zero.' }]);
    if ((kind === 'scrapped' || kind === 'counted') && reason === '') throw errors.REASON_WANTED();
    if ((kind === 'issued' || kind === 'returned') && jobId === null) throw errors.JOB_WANTED();
    if (jobId !== null) found(jobRowById(store, jobId), 'job');
    const signed = signedQuantity(kind, quantity, onHand);
    if (onHand + signed < 0) throw errors.NOT_ON_THE_SHELF({ data: { onHand } });
    store
      .insert(stockMovement)
      .values({ id: newId(), partId, kind, quantity: signed, jobId, reason, by: staff.id, at })
      .run();
    note({ part: partId, movement: kind, quantity: signed, job: jobId });
    return found(partById(store, partId), 'part');
  }),
);
