import { DEMO_PRICE_FILES, PRICE_FILE_SUPPLIER } from '../../../db/demo/price-files.ts';
import { idOf, type OpenShop } from './set-up.ts';
import type { Happening } from './tell-job.ts';

const COLUMNS = {
  number: { column: 0, heading: 'Part no' },
  description: { column: 1, heading: 'Description' },
  cost: { column: 2, heading: 'Your price' },
  listPrice: { column: 3, heading: 'List price' },
  packSize: { column: 4, heading: 'Pack of' },
  supersededBy: { column: 5, heading: 'Replaced by' },
};

/** A supplier's price file was applied when the shop was new, and the next one has just been read. */
export function tellPriceFiles({ desk, clock, staff, suppliers }: OpenShop): Happening[] {
  const by = idOf(staff, 'ruth');
  const read = ({ fileName, text }: { fileName: string; text: string }) =>
    desk.parts.readPriceFile({
      by,
      supplierId: idOf(suppliers, PRICE_FILE_SUPPLIER),
      fileName,
      bytes: Buffer.from(text).toString('base64'),
      mapping: { headingLines: 1, columns: COLUMNS },
      wait: true,
    });
  return [
    {
      at: clock.instant(-242, '16:40'),
      pace: 20,
      happens: async () => {
        const { id } = await read(DEMO_PRICE_FILES.applied);
        await desk.parts.applyPriceFile({ by, id });
      },
    },
    {
      at: clock.instant(-1, '16:50'),
      pace: 20,
      happens: async () => {
        await read(DEMO_PRICE_FILES.toLookAt);
      },
    },
  ];
}
