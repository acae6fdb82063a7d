import type { PriceFileMapping, PriceFileSketch } from '../../../shared/contract/parts/index.ts';
import {
  type DecimalMark,
  PRICE_FILE_FIELDS,
  type PricedBy,
  type PriceFileField,
} from '../../../shared/work/parts/price-file/words.ts';

/** How somebody says a file is to be read, until all of it is said. */
export interface MappingDraft {
  /** What each column holds; null for what is left out. */
  fields: readonly (PriceFileField | null)[];
  decimalMark: DecimalMark;
  pricedBy: PricedBy;
}

export const draftFrom = ({
  columns,
  headings,
  decimalMark,
  pricedBy,
}: PriceFileSketch): MappingDraft => ({
  fields: headings.map(
    (_, column) => PRICE_FILE_FIELDS.find((field) => columns[field] === column) ?? null,
  ),
  decimalMark,
  pricedBy,
});

/** Says what a column holds; another one that held it holds nothing then. */
export const withField = (
  draft: MappingDraft,
  column: number,
  field: PriceFileField | null,
): MappingDraft => ({
  ...draft,
  fields: draft.fields.map((known, index) => {
    if (index === column) return field;
    return known === field ? null : known;
  }),
});

/** Null until number and cost each have a column. */
export function mappingOf(draft: MappingDraft, sketch: PriceFileSketch): PriceFileMapping | null {
  const at = (field: PriceFileField) => {
    const column = draft.fields.indexOf(field);
    return column < 0 ? null : { column, heading: sketch.headings[column] ?? '' };
  };
  const [number, cost] = [at('number'), at('cost')];
  if (number === null || cost === null) return null;
  const { encoding, delimiter, sheet, headingLines } = sketch;
  return {
    encoding,
    delimiter,
    sheet,
    headingLines,
    decimalMark: draft.decimalMark,
    pricedBy: draft.pricedBy,
    columns: {
      number,
      cost,
      description: at('description'),
      listPrice: at('listPrice'),
      packSize: at('packSize'),
      coreCharge: at('coreCharge'),
      supersededBy: at('supersededBy'),
    },
  };
}
