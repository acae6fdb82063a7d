import { shopOf } from '../../../db/queries/office.ts';
import { shelvesToPutRight, valuedShelves } from '../../../db/queries/parts/standing.ts';
import { addDays, dateIn, dayBegins } from '../../../shared/work/calendar.ts';
import { os } from '../implementer.ts';

const toPutRight = os.parts.toPutRight.handler(({ context }) =>
  shelvesToPutRight(context.store.read),
);

const valuation = os.parts.valuation.handler(({ input, context: { store, now } }) => {
  const { timeZone } = shopOf(store.read);
  const on = input.on ?? dateIn(timeZone, now());
  const shelves = valuedShelves(store.read, dayBegins(timeZone, addDays(on, 1)));
  return { on, shelves, worth: shelves.reduce((sum, { worth }) => sum + worth, 0) };
});

export const standing = { toPutRight, valuation };
