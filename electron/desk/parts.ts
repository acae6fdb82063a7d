import { eq } from 'drizzle-orm';
import { jobRowById } from '../../db/queries/counter/jobs.ts';
import { findParts, movementsOf, partById, partByKey } from '../../db/queries/parts.ts';
import { searchTextOf } from '../../db/queries/search-text.ts';
import { part as partTable, stockMovement } from '../../db/schema/index.ts';
import type { Movement } from '../../shared/contract/parts.ts';
import { foldNumber } from '../../shared/work/fold.ts';
import { os } from './implementer.ts';
import { badInput, found } from './refuse.ts';
import { write } from './writing.ts';

const find = os.parts.find.handler(({ input, context }) =>
  findParts(context.store.read, input.text, input.limit),
);

const part = os.parts.part.handler(({ input, context: { store } }) => ({
  part: found(partById(store.read, input.id), 'part'),
  movements: movementsOf(store.read, input.id),
}));

const add = os.parts.add.handler(({ input: { by, ...facts }, context, errors, path }) =>
  write(context, path, by, ({ store, newId, note }) => {
    const numberKey = foldNumber(facts.number);
    if (numberKey === '')
      throw badInput([{ path: 'number', message: 'A part number has a letter or a figure.' }]);
    const twin = partByKey(store, numberKey);
    if (twin) throw errors.PART_NUMBER_TAKEN({ data: { partId: twin.id } });
    const id = newId();
    store
      .insert(partTable)
      .values({
        id,
        ...facts,
        numberKey,
        searchText: searchTextOf(
          facts.number,
          facts.description,
          facts.barcode,
          facts.bin,
          facts.supplier,
        ),
      })
      .run();
    note({ part: id, number: facts.number });
    return found(partById(store, id), 'part');
  }),
);

const reprice = os.parts.reprice.handler(({ input, context, path }) =>
  write(context, path, input.by, ({ store, note }) => {
    const { by: _by, partId, ...prices } = input;
    const before = found(partById(store, partId), 'part');
    store.update(partTable).set(prices).where(eq(partTable.id, partId)).run();
    const after = found(partById(store, partId), 'part');
    note({
      part: partId,
      number: before.number,
      priceRule: after.priceRule,
      formerPrice: before.sellsAt,
      price: after.sellsAt,
      formerCost: before.cost,
      cost: after.cost,
    });
    return after;
  }),
);

/** What a movement adds to the shelf, in thousandths; a count says what is there. */
const signedQuantity = (kind: Movement['kind'], quantity: number, onHand: number): number => {
  if (kind === 'counted') return quantity - onHand;
  return kind === 'received' || kind === 'returned' ? quantity : -quantity;
};

const move = os.parts.move.handler(({ input, context, errors, path }) =>
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

export const parts = { find, part, add, reprice, move };
