import { and, eq } from 'drizzle-orm';
import { shopOf } from '../../../db/queries/office.ts';
import {
  binsOf,
  countById,
  countCards,
  countLineOf,
  countRowById,
  openCountAt,
} from '../../../db/queries/parts/counts.ts';
import { partById } from '../../../db/queries/parts/part.ts';
import { shelfOf } from '../../../db/queries/parts/shelf.ts';
import { stockCount, stockCountLine } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { enterMovement } from './ledger.ts';

const MOST_LISTED = 50;

const binsToCount = os.parts.binsToCount.handler(({ context: { store } }) =>
  binsOf(store.read, shopOf(store.read).timeZone),
);

const counts = os.parts.counts.handler(({ input, context: { store } }) =>
  countCards(store.read, input.limit),
);

const countOf = (store: ReadStore, id: string) => found(countById(store, id), 'count');

const count = os.parts.count.handler(({ input, context: { store } }) =>
  countOf(store.read, input.id),
);

const openCount = os.parts.openCount.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, newId, note }) => {
    const { bin } = input;
    const goingOn = openCountAt(store, bin);
    if (goingOn !== undefined) throw errors.COUNT_GOING_ON({ data: { countId: goingOn } });
    const id = newId();
    store.insert(stockCount).values({ id, bin, by: staff.id, at }).run();
    const opened = countOf(store, id);
    if (opened.lines.length === 0) throw errors.BIN_EMPTY();
    note({ count: id, bin });
    return opened;
  }),
);

/** @throws the declared COUNT_CLOSED */
function stillOpen(
  store: ReadStore,
  id: string,
  errors: { COUNT_CLOSED: () => Error },
): { bin: string } {
  const row = found(countRowById(store, id), 'count');
  if (row.closedAt !== null) throw errors.COUNT_CLOSED();
  return row;
}

/** Keeps a figure beside what the movements say at this moment: what moves later is no difference. */
function putFigure({ store }: Writing, countId: string, partId: string, counted: number) {
  const expected = shelfOf(store, partId).onHand;
  store
    .insert(stockCountLine)
    .values({ countId, partId, counted, expected, explanation: '' })
    .onConflictDoUpdate({
      target: [stockCountLine.countId, stockCountLine.partId],
      set: { counted, expected },
    })
    .run();
  return { counted, expected };
}

const countPart = os.parts.countPart.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, note } = writing;
    const { countId, partId, counted } = input;
    stillOpen(store, countId, errors);
    const { number } = found(partById(store, partId), 'part');
    putFigure(writing, countId, partId, counted);
    note({ count: countId, number, counted });
    return countOf(store, countId);
  }),
);

const closeCount = os.parts.closeCount.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, at, note }) => {
    const { countId } = input;
    const { bin } = stillOpen(store, countId, errors);
    const missing = countOf(store, countId)
      .lines.filter(({ counted }) => counted === null)
      .map(({ number }) => number);
    if (missing.length > 0)
      throw errors.NOT_ALL_COUNTED({ data: { numbers: missing.slice(0, MOST_LISTED) } });
    store.update(stockCount).set({ closedAt: at }).where(eq(stockCount.id, countId)).run();
    const closed = countOf(store, countId);
    const differ = closed.lines.filter(({ outcome }) => outcome?.difference !== 0);
    note({ count: countId, bin, parts: closed.lines.length, differences: differ.length });
    return closed;
  }),
);

const explainDifference = os.parts.explainDifference.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, note } = writing;
    const { countId, partId, explanation, recounted } = input;
    const { closedAt } = found(countRowById(store, countId), 'count');
    if (closedAt === null) throw errors.COUNT_OPEN();
    const line = found(countLineOf(store, countId, partId), 'counted part');
    if (line.counted === line.expected || line.explanation !== '')
      throw errors.NOTHING_TO_EXPLAIN();
    const figure = recounted === null ? line : putFigure(writing, countId, partId, recounted);
    const difference = figure.counted - figure.expected;
    store
      .update(stockCountLine)
      .set({ explanation })
      .where(and(eq(stockCountLine.countId, countId), eq(stockCountLine.partId, partId)))
      .run();
    if (difference !== 0)
      enterMovement(writing, {
        kind: 'counted',
        partId,
        difference,
        countId,
        reason: explanation,
        // What was missing in the bin may have been issued since: then the shelf has to be put right.
        belowNothing: true,
      });
    const { number } = found(partById(store, partId), 'part');
    note({ count: countId, number, counted: line.counted, recounted, difference, explanation });
    return countOf(store, countId);
  }),
);

const dropCount = os.parts.dropCount.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, note }) => {
    const { countId } = input;
    const { bin } = stillOpen(store, countId, errors);
    store.delete(stockCountLine).where(eq(stockCountLine.countId, countId)).run();
    store.delete(stockCount).where(eq(stockCount.id, countId)).run();
    note({ count: countId, bin });
    return countCards(store, MOST_LISTED);
  }),
);

/** Counting the shelves, a bin at a time, blind. */
export const stockCounts = {
  binsToCount,
  counts,
  count,
  openCount,
  countPart,
  closeCount,
  explainDifference,
  dropCount,
};
