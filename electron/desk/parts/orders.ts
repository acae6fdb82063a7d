import { shopOf } from '../../../db/queries/office.ts';
import { linesToCome, orderById, orderCards } from '../../../db/queries/parts/orders.ts';
import { minorDigits, minorToDecimal } from '../../../shared/money/index.ts';
import { dateIn } from '../../../shared/work/calendar.ts';
import type { DeskContext } from '../context.ts';
import { csvText } from '../csv-cells.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { moveExpected } from './move-expected.ts';
import { placeOrder } from './place-order.ts';

const todayOf = ({ store, now }: DeskContext): string => dateIn(shopOf(store.read).timeZone, now());

const list = os.parts.orders.handler(({ input, context }) =>
  orderCards(context.store.read, { ...input, today: todayOf(context) }),
);

const order = os.parts.order.handler(({ input, context }) =>
  found(orderById(context.store.read, input.id, todayOf(context)), 'order'),
);

const toCome = os.parts.toCome.handler(({ context }) =>
  linesToCome(context.store.read, todayOf(context)),
);

const orderFile = os.parts.orderFile.handler(({ input, context }) => {
  const { number, items } = found(
    orderById(context.store.read, input.id, todayOf(context)),
    'order',
  );
  const { currency } = shopOf(context.store.read);
  const money = (minor: number) => minorToDecimal(minor, minorDigits(currency));
  const rows = items.map((item, place) => [
    number,
    String(place + 1),
    item.supplierNumber,
    item.part.number,
    item.part.description,
    minorToDecimal(item.ordered, 3),
    item.part.unit,
    money(item.unitCost),
    money(item.amount),
    item.jobCode,
  ]);
  const headings = [
    'Order',
    'Line',
    'Your number',
    'Our number',
    'Description',
    'Quantity',
    'Unit',
    `Unit price, ${currency}`,
    `Amount, ${currency}`,
    'For job',
  ];
  return {
    fileName: `purchase-order-${number}.csv`,
    text: csvText([headings, ...rows], input.mark),
  };
});

export const orders = { orders: list, order, toCome, orderFile, placeOrder, moveExpected };
