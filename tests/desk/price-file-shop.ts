import type { SupplierId } from '../../shared/contract/ids.ts';
import type {
  PriceFileCard,
  PriceFileMapping,
  PriceFileSketch,
} from '../../shared/contract/parts/index.ts';
import { PRICE_FILE_FIELDS } from '../../shared/work/parts/price-file/words.ts';
import { openTestShop, type TestShop } from './shop.ts';

export const base64 = (content: string | Buffer) => Buffer.from(content).toString('base64');

export const NO_COLUMNS = {
  description: null,
  listPrice: null,
  packSize: null,
  coreCharge: null,
  supersededBy: null,
};

/** As a screen makes it from what the file looks like. */
export function mappingFrom(sketch: PriceFileSketch): PriceFileMapping {
  const at = (column: number | null) =>
    column === null ? null : { column, heading: sketch.headings[column] ?? '' };
  const columns = Object.fromEntries(
    PRICE_FILE_FIELDS.map((field) => [field, at(sketch.columns[field])]),
  );
  const { encoding, delimiter, sheet, decimalMark, pricedBy, headingLines } = sketch;
  const form = { encoding, delimiter, sheet, decimalMark, pricedBy, headingLines };
  const none = { column: 0, heading: '' };
  return { ...form, columns: { number: none, cost: none, ...NO_COLUMNS, ...columns } };
}

/** A shop with a supplier whose price files are looked at and read. */
export interface PriceFileShop extends TestShop {
  supplierId: SupplierId;
  sketch: (content: string | Buffer) => Promise<PriceFileSketch>;
  read: (content: string | Buffer, more?: { wait?: boolean }) => Promise<PriceFileCard>;
}

export async function openPriceFileShop(): Promise<PriceFileShop> {
  const shop = await openTestShop();
  const { desk, by } = shop;
  const { id: supplierId } = await desk.parts.addSupplier({ by, name: 'Prairie Line' });
  const file = (content: string | Buffer) => ({
    supplierId,
    fileName: 'list.csv',
    bytes: base64(content),
  });
  const sketch = (content: string | Buffer) => desk.parts.sketchPriceFile(file(content));
  return {
    ...shop,
    supplierId,
    sketch,
    read: async (content, more = {}) =>
      desk.parts.readPriceFile({
        by,
        ...file(content),
        mapping: mappingFrom(await sketch(content)),
        wait: true,
        ...more,
      }),
  };
}
