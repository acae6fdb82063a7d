import { eq } from 'drizzle-orm';
import { offersFor } from '../../../../db/queries/parts/offers.ts';
import {
  changesOf,
  linesThatChange,
  unreadableLinesOf,
} from '../../../../db/queries/parts/price-file-lines.ts';
import {
  countsOf,
  priceFileById,
  priceFileRow,
  priceFilesIn,
  priceFilesOf,
} from '../../../../db/queries/parts/price-files.ts';
import { partsRepriced, partsToReprice } from '../../../../db/queries/parts/repriced-parts.ts';
import { priceFile } from '../../../../db/schema/index.ts';
import type { Store } from '../../../../db/store.ts';
import { PriceFileMapping } from '../../../../shared/contract/parts/index.ts';
import { os } from '../../implementer.ts';
import { found } from '../../refuse.ts';
import { type Writing, write } from '../../writing.ts';
import { applyToParts, applyToPriceList, dropUsableLines } from './apply.ts';
import { beginReading } from './begin.ts';
import { dropLines } from './read-lines.ts';
import { readingsOf } from './readings.ts';
import { sketchPriceFile } from './sketch-file.ts';
import { forgetChanges, undoInPriceList, undoOnParts } from './undo.ts';

const cardOf = (store: Store, id: string) =>
  found(priceFileById(store.read, id, readingsOf(store)), 'price file');

const rowOf = (store: Store['read'], id: string) => found(priceFileRow(store, id), 'price file');

/** A file that waits to be applied is compared with a price list that has just changed. */
function countAnew({ store }: Writing, supplierId: string): void {
  for (const id of priceFilesIn(store, supplierId, 'read')) {
    const { ours } = countsOf(rowOf(store, id).counts);
    store
      .update(priceFile)
      .set({ counts: JSON.stringify({ ...changesOf(store, id), ours }) })
      .where(eq(priceFile.id, id))
      .run();
  }
}

const stopPriceFile = os.parts.stopPriceFile.handler(({ input, context, errors, path }) => {
  const { store } = context;
  write(context, path, input.by, ({ store: writing, note }) => {
    const { id, state, fileName, supplierId } = rowOf(writing, input.id);
    if (state === 'applied' || state === 'undone') throw errors.APPLIED_ALREADY();
    dropLines(writing, id);
    note({ priceFile: id, fileName, supplier: supplierId });
  });
  const reading = readingsOf(store).get(input.id);
  if (reading !== undefined) reading.stopped = true;
  readingsOf(store).delete(input.id);
  return cardOf(store, input.id);
});

const applyPriceFile = os.parts.applyPriceFile.handler(({ input, context, errors, path }) => {
  write(context, path, input.by, (writing) => {
    const { store, at, note } = writing;
    const { id, state, fileName, supplierId, mapping, counts } = rowOf(store, input.id);
    if (state !== 'read') throw errors.NOT_READ();
    const file = { id, supplierId, mapping: PriceFileMapping.parse(JSON.parse(mapping)) };
    const parts = applyToParts(writing, file);
    applyToPriceList(store, file);
    dropUsableLines(store, id);
    store
      .update(priceFile)
      .set({ state: 'applied', appliedAt: at })
      .where(eq(priceFile.id, id))
      .run();
    countAnew(writing, supplierId);
    note({ priceFile: id, fileName, supplier: supplierId, ...countsOf(counts), parts });
  });
  return cardOf(context.store, input.id);
});

const undoPriceFile = os.parts.undoPriceFile.handler(({ input, context, errors, path }) => {
  write(context, path, input.by, (writing) => {
    const { store, at, note } = writing;
    const { id, state, fileName, supplierId } = rowOf(store, input.id);
    const card = priceFileById(store, id, readingsOf(context.store));
    if (state !== 'applied' || card?.canBeUndone !== true) throw errors.NOT_THE_LAST();
    const parts = undoOnParts(writing, id);
    undoInPriceList(store, id);
    forgetChanges(store, id);
    store
      .update(priceFile)
      .set({ state: 'undone', undoneAt: at })
      .where(eq(priceFile.id, id))
      .run();
    countAnew(writing, supplierId);
    note({ priceFile: id, fileName, supplier: supplierId, parts });
  });
  return cardOf(context.store, input.id);
});

const priceFiles = os.parts.priceFiles.handler(({ input, context: { store } }) =>
  priceFilesOf(store.read, input.limit, readingsOf(store)),
);

const priceFileCard = os.parts.priceFile.handler(({ input, context: { store } }) =>
  cardOf(store, input.id),
);

const priceFileLines = os.parts.priceFileLines.handler(({ input, context: { store } }) => {
  rowOf(store.read, input.id);
  return linesThatChange(store.read, input.id, input.change, input);
});

const unreadableLines = os.parts.unreadableLines.handler(({ input, context: { store } }) => {
  rowOf(store.read, input.id);
  return unreadableLinesOf(store.read, input.id, input);
});

const repricedParts = os.parts.repricedParts.handler(({ input, context: { store } }) => {
  const { id, state, supplierId, mapping } = rowOf(store.read, input.id);
  const { columns } = PriceFileMapping.parse(JSON.parse(mapping));
  const hasListPrices = columns.listPrice !== null;
  const all =
    state === 'read'
      ? partsToReprice(store.read, id, { supplierId, hasListPrices })
      : partsRepriced(store.read, id);
  return all.slice(input.from, input.from + input.limit);
});

const findOffers = os.parts.findOffers.handler(({ input, context: { store } }) =>
  offersFor(store.read, input.text, input.limit),
);

export const suppliersFiles = {
  sketchPriceFile,
  readPriceFile: beginReading,
  stopPriceFile,
  priceFiles,
  priceFile: priceFileCard,
  priceFileLines,
  unreadableLines,
  repricedParts,
  applyPriceFile,
  undoPriceFile,
  findOffers,
};
