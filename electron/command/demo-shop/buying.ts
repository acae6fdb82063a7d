import { DEMO_OLD_PARTS, type DemoOrder } from '../../../db/demo/orders.ts';
import { demoPart, type PartNumber, type SupplierName } from '../../../db/demo/parts.ts';
import { DEMO_SUPPLIERS } from '../../../db/demo/suppliers.ts';
import { carriageOn } from '../../../shared/work/parts/order-quantity.ts';
import { idOf, type OpenShop, partId } from './set-up.ts';
import type { Happening } from './tell-job.ts';

const ONE = 1000;

interface Wanted {
  supplier: SupplierName;
  lines: readonly { number: PartNumber; count: number; jobId?: string }[];
  note: string;
  expectedOn: string | null;
}

function place(shop: OpenShop, { supplier, lines, note, expectedOn }: Wanted) {
  const { desk, staff, suppliers } = shop;
  const goods = lines.reduce((sum, { number, count }) => sum + demoPart(number).cost * count, 0);
  return desk.parts.placeOrder({
    by: idOf(staff, 'ruth'),
    supplierId: idOf(suppliers, supplier),
    lines: lines.map(({ number, count, jobId }) => ({
      partId: partId(shop, number),
      quantity: count * ONE,
      unitCost: demoPart(number).cost,
      jobId: jobId ?? null,
    })),
    carriage: carriageOn(DEMO_SUPPLIERS[supplier], goods),
    expectedOn,
    note,
    belowMinimum: true,
  });
}

type Placed = Awaited<ReturnType<typeof place>>;

/** A line of an order that was placed. */
function lineOf({ items }: Placed, number: PartNumber): Placed['items'][number] {
  const line = items.find(({ part }) => part.number === number);
  if (line === undefined) throw new Error(`The order has no ${number}.`);
  return line;
}

/** Orders a part for a job that waits for it; what it gives back takes it in when it comes. */
export async function orderForJob(
  shop: OpenShop,
  wanted: { number: PartNumber; jobId: string; expectedOn: string },
): Promise<(by: string) => Promise<void>> {
  const { number, jobId, expectedOn } = wanted;
  const { supplier } = demoPart(number);
  const lines = [{ number, count: 1, jobId }];
  const order = await place(shop, { supplier, lines, note: '', expectedOn });
  const { id: lineId, unitCost } = lineOf(order, number);
  return async (by) => {
    await shop.desk.parts.receive({
      by,
      orderId: order.id,
      lines: [{ lineId, quantity: ONE, unitCost }],
    });
  };
}

/** An order for the shelves as what happens of it, day by day. */
export function tellOrder(shop: OpenShop, story: DemoOrder): Happening[] {
  const { desk, clock, staff } = shop;
  let placed: Placed | undefined;
  const order = () => {
    if (placed === undefined) throw new Error('The order was not placed yet.');
    return placed;
  };
  const on = (day: number, time: string, happens: () => Promise<void>): Happening => ({
    at: clock.instant(day, time),
    pace: 30,
    happens,
  });
  const { supplier, lines, note, deliveries, givenUp } = story;
  return [
    on(story.on, '17:20', async () => {
      placed = await place(shop, { supplier, lines, note, expectedOn: null });
    }),
    ...deliveries.map((delivery) =>
      on(delivery.on, '10:40', async () => {
        await desk.parts.receive({
          by: idOf(staff, delivery.by),
          orderId: order().id,
          lines: delivery.lines.map(({ number, came, cost }) => {
            const { id: lineId, unitCost } = lineOf(order(), number);
            return { lineId, quantity: came * ONE, unitCost: cost ?? unitCost };
          }),
          carriage: delivery.carriage,
          deliveryNote: delivery.note,
        });
      }),
    ),
    ...(givenUp === undefined
      ? []
      : [
          on(givenUp.on, '09:15', async () => {
            await desk.parts.closeShort({
              by: idOf(staff, 'ruth'),
              orderId: order().id,
              reason: givenUp.why,
            });
          }),
        ]),
  ];
}

/** What became of the old parts that customers brought back. */
export function tellOldParts(shop: OpenShop): Happening[] {
  const { desk, clock, staff, suppliers } = shop;
  const { part, count, takenIn, sentBack, credited } = DEMO_OLD_PARTS;
  const away = { partId: partId(shop, part), supplierId: idOf(suppliers, demoPart(part).supplier) };
  const on = (day: number, happens: () => Promise<void>): Happening => ({
    at: clock.instant(day, '16:10'),
    pace: 30,
    happens,
  });
  return [
    on(takenIn.on, async () => {
      const { partId: id } = away;
      const by = idOf(staff, takenIn.by);
      await desk.parts.takeInCore({ by, partId: id, quantity: count * ONE });
    }),
    on(sentBack.on, async () => {
      const { coreCharge } = (await desk.parts.part({ id: away.partId })).part;
      await desk.parts.sendCoreBack({
        by: idOf(staff, 'ruth'),
        ...away,
        quantity: sentBack.count * ONE,
        expected: sentBack.count * coreCharge,
      });
    }),
    on(credited.on, async () => {
      await desk.parts.settleCore({
        by: idOf(staff, 'ruth'),
        ...away,
        outcome: 'credited',
        quantity: credited.count * ONE,
        amount: credited.amount,
        note: credited.note,
      });
    }),
  ];
}
