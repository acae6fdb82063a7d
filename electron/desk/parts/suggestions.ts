import { shopOf } from '../../../db/queries/office.ts';
import { suggestedOrders } from '../../../db/queries/parts/suggestions.ts';
import { dateIn } from '../../../shared/work/calendar.ts';
import { os } from '../implementer.ts';

const MILLION = 1_000_000;

export const suggestions = os.parts.suggestions.handler(({ input, context: { store, now } }) => {
  const at = now();
  return suggestedOrders(store.read, {
    service: input.service / MILLION,
    holding: input.holding / MILLION,
    perOrder: input.perOrder,
    at: at.toISOString(),
    today: dateIn(shopOf(store.read).timeZone, at),
  });
});
