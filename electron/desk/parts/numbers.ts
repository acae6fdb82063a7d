import { eq } from 'drizzle-orm';
import { laterOf } from '../../../db/queries/parts/chain.ts';
import { partNames } from '../../../db/queries/parts/names.ts';
import {
  otherNumberById,
  otherNumbersOf,
  partsByNumber,
} from '../../../db/queries/parts/numbers.ts';
import { partById } from '../../../db/queries/parts/part.ts';
import { otherNumber, part as partTable } from '../../../db/schema/index.ts';
import { foldNumber } from '../../../shared/work/fold.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';
import { settlePromises } from './promises.ts';
import { keepSearchText } from './search-text.ts';

const byNumber = os.parts.byNumber.handler(({ input, context }) =>
  partsByNumber(context.store.read, input.number),
);

const addNumber = os.parts.addNumber.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, newId, note }) => {
    const { partId, kind, whose, number } = input;
    const part = found(partById(store, partId), 'part');
    const numberKey = foldNumber(number);
    if (numberKey === '')
      throw badInput([{ path: 'number', message: 'A part number has a letter or a figure.' }]);
    const finds = partsByNumber(store, number).some((hit) => hit.part.id === partId);
    if (finds) throw errors.HAS_THIS_NUMBER();
    store.insert(otherNumber).values({ id: newId(), partId, kind, whose, number, numberKey }).run();
    keepSearchText(store, partId);
    note({ part: partId, number: part.number, otherNumber: number, kind, whose });
    return otherNumbersOf(store, partId);
  }),
);

const dropNumber = os.parts.dropNumber.handler(({ input, context, path }) =>
  write(context, path, input.by, ({ store, note }) => {
    const { id, partId, number } = found(otherNumberById(store, input.id), 'number');
    store.delete(otherNumber).where(eq(otherNumber.id, id)).run();
    keepSearchText(store, partId);
    note({ part: partId, otherNumber: number });
    return otherNumbersOf(store, partId);
  }),
);

const supersede = os.parts.supersede.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, note } = writing;
    const { partId, supersededBy } = input;
    const part = found(partById(store, partId), 'part');
    const later = supersededBy === null ? [] : laterOf(store, supersededBy);
    if (supersededBy !== null) found(partById(store, supersededBy), 'part in its place');
    if (later.includes(partId))
      throw errors.SUPERSESSION_LOOP({
        data: { numbers: partNames(store, [partId, ...later]).map(({ number }) => number) },
      });
    store.update(partTable).set({ supersededBy }).where(eq(partTable.id, partId)).run();
    // What stands in for what has changed, and with it what can be promised to whom; both ends, if they parted.
    settlePromises(writing, partId);
    if (supersededBy !== null) settlePromises(writing, supersededBy);
    note({
      part: partId,
      number: part.number,
      supersededBy,
      by: partNames(store, later.slice(0, 1))[0]?.number ?? '',
    });
    return found(partById(store, partId), 'part');
  }),
);

export const numbers = { byNumber, addNumber, dropNumber, supersede };
