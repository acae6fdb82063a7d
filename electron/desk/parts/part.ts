import { eq } from 'drizzle-orm';
import { partDossierOf } from '../../../db/queries/parts/dossier.ts';
import { findParts, partById, partIdByKey } from '../../../db/queries/parts/part.ts';
import { otherNumber, part as partTable, stockMovement } from '../../../db/schema/index.ts';
import { foldNumber } from '../../../shared/work/fold.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';
import { keepSearchText } from './search-text.ts';

const find = os.parts.find.handler(({ input, context }) =>
  findParts(context.store.read, input.text, input.limit),
);

const part = os.parts.part.handler(({ input, context: { store } }) =>
  found(partDossierOf(store.read, input.id), 'part'),
);

/** @throws BAD_INPUT for a number of nothing but dashes */
function keyOf(number: string): string {
  const numberKey = foldNumber(number);
  if (numberKey === '')
    throw badInput([{ path: 'number', message: 'A part number has a letter or a figure.' }]);
  return numberKey;
}

const add = os.parts.add.handler(({ input: { by, ...facts }, context, errors, path }) =>
  write(context, path, by, ({ store, newId, note }) => {
    const numberKey = keyOf(facts.number);
    const twin = partIdByKey(store, numberKey);
    if (twin) throw errors.PART_NUMBER_TAKEN({ data: { partId: twin } });
    const id = newId();
    store
      .insert(partTable)
      .values({ id, ...facts, numberKey, searchText: '' })
      .run();
    keepSearchText(store, id);
    note({ part: id, number: facts.number });
    return found(partById(store, id), 'part');
  }),
);

const amend = os.parts.amend.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, newId, note }) => {
    const { by: _by, partId, ...facts } = input;
    const before = found(partById(store, partId), 'part');
    const numberKey = keyOf(facts.number);
    const twin = partIdByKey(store, numberKey);
    if (twin !== undefined && twin !== partId)
      throw errors.PART_NUMBER_TAKEN({ data: { partId: twin } });
    const hasMoved =
      store
        .select({ id: stockMovement.id })
        .from(stockMovement)
        .where(eq(stockMovement.partId, partId))
        .limit(1)
        .get() !== undefined;
    if (facts.unit !== before.unit && hasMoved) throw errors.UNIT_IN_USE();
    store
      .update(partTable)
      .set({ ...facts, numberKey })
      .where(eq(partTable.id, partId))
      .run();
    const formerKey = foldNumber(before.number);
    if (formerKey !== numberKey)
      store
        .insert(otherNumber)
        .values({
          id: newId(),
          partId,
          kind: 'former',
          whose: '',
          number: before.number,
          numberKey: formerKey,
        })
        .run();
    keepSearchText(store, partId);
    note({ part: partId, number: facts.number, formerNumber: before.number });
    return found(partById(store, partId), 'part');
  }),
);

export const shelf = { find, part, add, amend };
