import { orderById } from '../../../db/queries/parts/orders.ts';
import { expectedChange } from '../../../db/schema/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';
import { keepWaitingWords } from './waiting-words.ts';

export const moveExpected = os.parts.moveExpected.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, staff, at, today, newId, note } = writing;
    const { orderId, expectedOn, reason } = input;
    if (expectedOn !== null && expectedOn < today) throw errors.EXPECTED_IN_THE_PAST();
    const order = found(orderById(store, orderId, today), 'order');
    const items = [...new Set(input.lineIds)].map((lineId) =>
      found(
        order.items.find(({ id }) => id === lineId),
        'order line',
      ),
    );
    if (items.some(({ owed }) => owed <= 0)) throw errors.NOTHING_OWED();
    keepWaitingWords(writing, () => {
      for (const { id: lineId, expectedOn: former } of items)
        store
          .insert(expectedChange)
          .values({ id: newId(), lineId, expectedOn, former, reason, by: staff.id, at })
          .run();
    });
    note({
      order: orderId,
      number: order.number,
      expectedOn,
      reason,
      parts: items.map(({ part }) => part.number).join(', '),
    });
    return found(orderById(store, orderId, today), 'order');
  }),
);
