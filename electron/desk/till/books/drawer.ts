import { shopOf } from '../../../../db/queries/office.ts';
import { bookedPayments } from '../../../../db/queries/till/books/booked.ts';
import { cashLeftBefore, cashUpsOf } from '../../../../db/queries/till/books/cash-ups.ts';
import { cashUp as cashUpTable } from '../../../../db/schema/index.ts';
import type { ReadStore } from '../../../../db/store.ts';
import type { DrawerDay } from '../../../../shared/contract/till/index.ts';
import { drawerDifference, expectedInDrawer } from '../../../../shared/money/books/index.ts';
import { dateIn } from '../../../../shared/work/calendar.ts';
import { os } from '../../implementer.ts';
import { write } from '../../writing.ts';
import { spanOfDays } from './span-of-days.ts';

function drawerOn(store: ReadStore, timeZone: string, day: string): DrawerDay {
  const moved = bookedPayments(store, {
    span: spanOfDays(timeZone, day, day),
    customerId: null,
  });
  return {
    day,
    left: cashLeftBefore(store, day),
    taken: expectedInDrawer(0, moved),
    moved: moved.map(({ at, kind, method, amount, customerName, jobCode, by }) => ({
      at,
      kind,
      method,
      amount,
      customerName,
      jobCode,
      by,
    })),
    cashUps: cashUpsOf(store, day),
  };
}

export const drawer = os.till.drawer.handler(({ input, context: { store, now } }) => {
  const { timeZone } = shopOf(store.read);
  return drawerOn(store.read, timeZone, input.day ?? dateIn(timeZone, now()));
});

export const cashUp = os.till.cashUp.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, shop, staff, at, today, newId, note }) => {
    const { day, opening, counted, note: words } = input;
    if (day > today) throw errors.DAY_TO_COME();
    const { moved } = drawerOn(store, shop.timeZone, day);
    const expected = expectedInDrawer(opening, moved);
    const { byMethod, total } = drawerDifference(expected, counted);
    const asExpected = Object.values(byMethod).every((difference) => difference === 0);
    if (!asExpected && words === '')
      throw errors.DIFFERENCE_UNEXPLAINED({ data: { difference: total } });
    store
      .insert(cashUpTable)
      .values({
        id: newId(),
        day,
        opening,
        expected,
        counted,
        difference: total,
        note: words,
        by: staff.id,
        at,
      })
      .run();
    note({ day, difference: total, note: words });
    return drawerOn(store, shop.timeZone, day);
  }),
);
