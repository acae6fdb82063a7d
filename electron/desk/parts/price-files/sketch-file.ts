import { priceFileMappingOf } from '../../../../db/queries/parts/price-files.ts';
import { os } from '../../implementer.ts';
import { found } from '../../refuse.ts';
import { sketchOf } from './sketch.ts';
import { openTable } from './table.ts';
import { uploadedPriceFile } from './uploaded.ts';

export const sketchPriceFile = os.parts.sketchPriceFile.handler(
  async ({ input, context: { store }, errors }) => {
    const remembered = found(priceFileMappingOf(store.read, input.supplierId), 'supplier');
    const { bytes } = uploadedPriceFile(input.bytes, errors);
    const table = await openTable(bytes, input.as);
    if (table === null) throw errors.NOT_A_PRICE_FILE();
    return sketchOf(table, remembered, input.as.headingLines);
  },
);
