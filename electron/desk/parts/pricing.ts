import { eq } from 'drizzle-orm';
import { partById } from '../../../db/queries/parts/part.ts';
import { part as partTable } from '../../../db/schema/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';

export const reprice = os.parts.reprice.handler(({ input, context, path }) =>
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
