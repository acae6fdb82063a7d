import { answerTo, keepAnswer } from '../../db/answers.ts';
import { enterInJournal, type JournalFacts } from '../../db/journal.ts';
import { newId } from '../../db/new-id.ts';
import { shopOf, staffById } from '../../db/queries/office.ts';
import type { WriteStore } from '../../db/store.ts';
import type { Shop, Staff } from '../../shared/contract/office.ts';
import { dateIn } from '../../shared/work/calendar.ts';
import type { DeskContext } from './context.ts';
import { staffUnknown } from './refuse.ts';

/** What a writing handler works with, all of it inside one transaction. */
export interface Writing {
  store: WriteStore;
  /** Who does it. */
  staff: Staff;
  shop: Shop;
  /** Now: UTC, ISO 8601. */
  at: string;
  /** Today in the shop's time zone. */
  today: string;
  newId: () => string;
  drawPaper: DeskContext['drawPaper'];
  /** Says in the journal what was done; every write says it once at least. */
  note: (detail: JournalFacts['detail']) => void;
}

/**
 * One call, one transaction: what `work` writes and what the journal says of it stand together or not at all.
 * A call that comes again under its key, because the answer was lost, gets that answer and writes nothing.
 * @throws the declared STAFF_UNKNOWN when `by` is nobody who works here
 */
export function write<T>(
  context: DeskContext,
  what: readonly string[],
  by: string,
  work: (writing: Writing) => T,
): T {
  const now = context.now();
  const key = context.requestKey?.() ?? null;
  const request = key === null ? null : { key, what: what.join('.') };
  return context.store.write((store) => {
    const given = request === null ? undefined : answerTo(store, request);
    if (given !== undefined) return JSON.parse(given);
    const staff = staffById(store, by);
    if (staff === undefined || !staff.active) throw staffUnknown();
    const shop = shopOf(store);
    const at = now.toISOString();
    const answer = work({
      store,
      staff,
      shop,
      at,
      today: dateIn(shop.timeZone, now),
      newId: () => newId(now),
      drawPaper: context.drawPaper,
      note: (detail) => enterInJournal(store, { at, by: staff.id, what: what.join('.'), detail }),
    });
    if (request !== null) keepAnswer(store, request, answer, now);
    return answer;
  });
}
