import { eq } from 'drizzle-orm';
import { partName } from '../../../db/queries/parts/names.ts';
import { orderById } from '../../../db/queries/parts/orders.ts';
import { partById } from '../../../db/queries/parts/part.ts';
import { part } from '../../../db/schema/index.ts';
import type { PurchaseOrderLine, Received } from '../../../shared/contract/parts/index.ts';
import { allocate, formatMoney } from '../../../shared/money/index.ts';
import { averageCost, costAt } from '../../../shared/work/parts/stock-ledger.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { enterMovement } from './ledger.ts';
import { settleJob } from './promises.ts';
import { keepWaitingWords } from './waiting-words.ts';

/** What came of one line of an order. */
interface Arrival {
  item: PurchaseOrderLine;
  quantity: number;
  unitCost: number;
  /** This line's share of the carriage, minor units. */
  carriage: number;
}

interface Delivery {
  /** `P-000042`. */
  number: string;
  deliveryNote: string;
  takeOnCosts: boolean;
}

/** Shares the carriage out by what the goods cost; by their number, when they cost nothing. */
function carriageShares(carriage: number, lines: readonly Omit<Arrival, 'carriage'>[]): number[] {
  const goods = lines.map(({ unitCost, quantity }) => costAt(unitCost, quantity));
  const weights = goods.some((amount) => amount > 0) ? goods : lines.map((line) => line.quantity);
  return allocate(carriage, weights);
}

/** `Order P-000042, delivery note 4711, at $12.40 each (ordered at $11.90)`. */
function receiptWords({ shop }: Writing, delivery: Delivery, arrival: Arrival): string {
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.locale);
  const { unitCost, item, carriage } = arrival;
  return [
    `Order ${delivery.number}`,
    ...(delivery.deliveryNote === '' ? [] : [`delivery note ${delivery.deliveryNote}`]),
    `at ${money(unitCost)} each${unitCost === item.unitCost ? '' : ` (ordered at ${money(item.unitCost)})`}`,
    ...(carriage === 0 ? [] : [`carriage ${money(carriage)}`]),
  ].join(', ');
}

function takeIn(writing: Writing, delivery: Delivery, arrival: Arrival): Received {
  const { store } = writing;
  const { item, quantity, unitCost, carriage } = arrival;
  const { id: partId } = item.part;
  const { cost: costBefore } = found(partById(store, partId), 'part');
  const { before, after } = enterMovement(writing, {
    kind: 'received',
    partId,
    quantity,
    cost: costAt(unitCost, quantity) + carriage,
    jobId: item.jobId,
    orderLineId: item.id,
    reason: receiptWords(writing, delivery, arrival),
  });
  if (delivery.takeOnCosts && unitCost !== costBefore)
    store.update(part).set({ cost: unitCost }).where(eq(part.id, partId)).run();
  return {
    part: found(partName(store, partId), 'part'),
    quantity,
    orderedAt: item.unitCost,
    paid: unitCost,
    carriage,
    averageBefore: averageCost(before),
    averageAfter: averageCost(after),
    costBefore,
    costAfter: delivery.takeOnCosts ? unitCost : costBefore,
    jobCode: item.jobCode,
  };
}

const receive = os.parts.receive.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, today, note } = writing;
    const { orderId, carriage, shareCarriage, takeOnCosts, keepMore, deliveryNote } = input;
    const order = found(orderById(store, orderId, today), 'order');
    const arrived = input.lines.map(({ lineId, quantity, unitCost }, place) => {
      const item = found(
        order.items.find(({ id }) => id === lineId),
        'order line',
      );
      if (input.lines.findIndex((line) => line.lineId === lineId) !== place)
        throw badInput([{ path: `lines.${place}.lineId`, message: 'This line is named twice.' }]);
      if (quantity > item.owed && !keepMore)
        throw errors.MORE_THAN_ORDERED({ data: { lineId, owed: item.owed } });
      return { item, quantity, unitCost };
    });
    const shares = shareCarriage ? carriageShares(carriage, arrived) : arrived.map(() => 0);
    const delivery = { number: order.number, deliveryNote, takeOnCosts };
    const received = keepWaitingWords(writing, () =>
      arrived.map((line, place) =>
        takeIn(writing, delivery, { ...line, carriage: shares[place] ?? 0 }),
      ),
    );
    note({
      order: orderId,
      number: order.number,
      deliveryNote,
      carriage,
      parts: received.map((each) => each.part.number).join(', '),
    });
    return { order: found(orderById(store, orderId, today), 'order'), received };
  }),
);

const closeShort = os.parts.closeShort.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, today, note } = writing;
    const { orderId, lineIds, reason } = input;
    const order = found(orderById(store, orderId, today), 'order');
    for (const lineId of lineIds)
      found(
        order.items.find(({ id }) => id === lineId),
        'order line',
      );
    const closing = order.items.filter(
      ({ id, owed }) => owed > 0 && (lineIds.length === 0 || lineIds.includes(id)),
    );
    if (closing.length === 0) throw errors.NOTHING_OWED();
    keepWaitingWords(writing, () => {
      for (const { id, part: of, owed, jobId } of closing)
        enterMovement(writing, {
          kind: 'order-closed',
          partId: of.id,
          quantity: owed,
          jobId,
          orderLineId: id,
          reason: `Order ${order.number}: ${reason}`,
        });
      // What was ordered for a job is no need of it any more.
      for (const { jobId } of closing) if (jobId !== null) settleJob(writing, jobId);
    });
    note({
      order: orderId,
      number: order.number,
      reason,
      parts: closing.map((each) => each.part.number).join(', '),
    });
    return found(orderById(store, orderId, today), 'order');
  }),
);

export const receiving = { receive, closeShort };
