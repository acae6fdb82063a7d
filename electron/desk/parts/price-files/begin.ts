import { eq } from 'drizzle-orm';
import { priceFileById, priceFilesIn } from '../../../../db/queries/parts/price-files.ts';
import { supplierById } from '../../../../db/queries/parts/suppliers.ts';
import { priceFile, supplier } from '../../../../db/schema/index.ts';
import type { Store } from '../../../../db/store.ts';
import { PriceFileId } from '../../../../shared/contract/ids.ts';
import { minorDigits } from '../../../../shared/money/index.ts';
import { os } from '../../implementer.ts';
import { badInput, found } from '../../refuse.ts';
import { write } from '../../writing.ts';
import { dropLines, type PriceFileToRead, readLines } from './read-lines.ts';
import { type Reading, readingsOf } from './readings.ts';
import { columnsNamedTwice, placesOf } from './sketch.ts';
import { openTable } from './table.ts';
import { uploadedPriceFile } from './uploaded.ts';

/** Reads the file in the background; whatever happens, nobody waits for an answer that never comes. */
function startReading(store: Store, file: PriceFileToRead): Reading {
  const readings = readingsOf(store);
  const reading: Reading = { lines: 0, share: 0, stopped: false, ended: Promise.resolve() };
  reading.ended = readLines(store, file, reading)
    .catch((error: unknown) => {
      try {
        store.write((writing) => dropLines(writing, file.id));
      } catch {
        // The store was closed under the reading, and the file counts as stopped when it is opened again.
        return;
      }
      process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
    })
    .finally(() => readings.delete(file.id));
  readings.set(file.id, reading);
  return reading;
}

export const beginReading = os.parts.readPriceFile.handler(
  async ({ input, context, errors, path }) => {
    const { store } = context;
    const { by, supplierId, fileName, mapping } = input;
    found(supplierById(store.read, supplierId), 'supplier');
    const twice = columnsNamedTwice(mapping);
    if (twice.length > 0)
      throw badInput(
        twice.map((field) => ({
          path: `mapping.columns.${field}`,
          message: 'Another field is read from this column too. Choose a column of its own.',
        })),
      );
    const { bytes, sha256 } = uploadedPriceFile(input.bytes, errors);
    const table = await openTable(bytes, mapping);
    if (table === null) throw errors.NOT_A_PRICE_FILE();

    const readings = readingsOf(store);
    // Whoever asks again begins again: what was read so far is dropped, and the reading itself is no answer.
    const { requestKey: _key, ...unkeyed } = context;
    const file = write(unkeyed, path, by, ({ store: writing, shop, newId, at, note }) => {
      for (const earlier of priceFilesIn(writing, supplierId, 'reading')) {
        if (readings.has(earlier))
          throw errors.STILL_READING({ data: { id: PriceFileId.parse(earlier) } });
        dropLines(writing, earlier);
      }
      for (const earlier of priceFilesIn(writing, supplierId, 'read')) dropLines(writing, earlier);
      const id = newId();
      const kept = JSON.stringify(mapping);
      writing
        .insert(priceFile)
        .values({
          id,
          supplierId,
          fileName,
          sha256,
          state: 'reading',
          mapping: kept,
          lines: 0,
          counts: '',
          by,
          at,
        })
        .run();
      writing
        .update(supplier)
        .set({ priceFileMapping: kept })
        .where(eq(supplier.id, supplierId))
        .run();
      note({ priceFile: id, fileName, supplier: supplierId, sha256 });
      const { decimalMark, pricedBy, headingLines } = mapping;
      const digits = minorDigits(shop.currency);
      const columns = placesOf(mapping);
      const form = { columns, decimalMark, pricedBy, digits, rounding: shop.rounding };
      return { id, supplierId, table, headingLines, form };
    });
    const reading = startReading(store, file);
    if (input.wait) await reading.ended;
    return found(priceFileById(store.read, file.id, readings), 'price file');
  },
);
