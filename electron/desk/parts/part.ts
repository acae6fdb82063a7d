import { movementsOf } from '../../../db/queries/parts/movements.ts';
import { findParts, partById, partByKey } from '../../../db/queries/parts/part.ts';
import { searchTextOf } from '../../../db/queries/search-text.ts';
import { part as partTable } from '../../../db/schema/index.ts';
import { foldNumber } from '../../../shared/work/fold.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';

const find = os.parts.find.handler(({ input, context }) =>
  findParts(context.store.read, input.text, input.limit),
);

const part = os.parts.part.handler(({ input, context: { store } }) => ({
  part: found(partById(store.read, input.id), 'part'),
  movements: movementsOf(store.read, input.id),
}));

const add = os.parts.add.handler(({ input: { by, ...facts }, context, errors, path }) =>
  write(context, path, by, ({ store, newId, note }) => {
    const numberKey = foldNumber(facts.number);
    if (numberKey === '')
      throw badInput([{ path: 'number', message: 'A part number has a letter or a figure.' }]);
    const twin = partByKey(store, numberKey);
    if (twin) throw errors.PART_NUMBER_TAKEN({ data: { partId: twin.id } });
    const id = newId();
    store
      .insert(partTable)
      .values({
        id,
        ...facts,
        numberKey,
        searchText: searchTextOf(
          facts.number,
          facts.description,
          facts.barcode,
          facts.bin,
          facts.supplier,
        ),
      })
      .run();
    note({ part: id, number: facts.number });
    return found(partById(store, id), 'part');
  }),
);

export const shelf = { find, part, add };
