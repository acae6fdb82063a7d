import { PriceFileMapping, type PriceFileSketch } from '../../../../shared/contract/parts/index.ts';
import {
  columnsAsBefore,
  columnsByHeading,
  looksLikeHeadings,
} from '../../../../shared/work/parts/price-file/columns.ts';
import { decimalMarkOf } from '../../../../shared/work/parts/price-file/decimal-amount.ts';
import { PRICE_FILE_FIELDS } from '../../../../shared/work/parts/price-file/words.ts';
import { type Table, type TableRow, textOf } from './table.ts';

/** Rows that are looked at, and those that are shown. */
const LOOKED_AT = 2000;
const SHOWN = 6;
/** Headings stand within the first rows, or nowhere. */
const HEADINGS_WITHIN = 20;
const MOST_COLUMNS = 200;

/**
 * How a table would be read: by what stands in it, and by how the supplier's last file was read.
 * @param remembered the mapping of the last file as it was kept, or empty
 */
export function sketchOf(
  table: Table,
  remembered: string,
  headingLines: number | undefined,
): PriceFileSketch {
  const rows = table.chunks(LOOKED_AT).take(1).toArray()[0]?.rows ?? [];
  const before = lastMapping(remembered);
  const heading = headingLines ?? headingLineOf(rows);
  const headingRow = rows.findLast(({ line }) => line <= heading);
  const parts = rows.filter(({ line }) => line > heading);
  const width = Math.min(
    MOST_COLUMNS,
    Math.max(1, ...rows.slice(0, 50).map(({ cells }) => cells?.length ?? 0)),
  );
  const headings = Array.from({ length: width }, (_, column) =>
    textOf(headingRow?.cells?.[column] ?? '')
      .trim()
      .slice(0, 400),
  );
  const known = before && columnsAsBefore(before.columns, headings);
  const fromLastFile = known !== null && known.number !== null && known.cost !== null;
  const columns = fromLastFile ? known : columnsByHeading(headings);
  const amounts = parts.flatMap(({ cells }) =>
    [columns.cost, columns.listPrice].flatMap((column) => {
      const cell = column === null ? undefined : cells?.[column];
      return typeof cell === 'string' ? [cell] : [];
    }),
  );
  return {
    kind: table.kind,
    encoding: table.encoding,
    delimiter: table.delimiter,
    sheets: table.sheets,
    sheet: table.sheet,
    decimalMark:
      decimalMarkOf(amounts) ?? before?.decimalMark ?? (table.delimiter === ';' ? ',' : '.'),
    pricedBy: before?.pricedBy ?? 'one',
    headingLines: heading,
    headings,
    sample: parts
      .slice(0, SHOWN)
      .map(({ cells, raw }) => (cells ?? [raw]).slice(0, width).map(textOf)),
    columns,
    columnsFrom: fromLastFile ? 'last-file' : 'headings',
  };
}

/** The line of the headings, which is the number of lines before the parts; zero for none. */
const headingLineOf = (rows: readonly TableRow[]): number =>
  rows.slice(0, HEADINGS_WITHIN).find(({ cells }) => looksLikeHeadings((cells ?? []).map(textOf)))
    ?.line ?? 0;

function lastMapping(remembered: string): PriceFileMapping | null {
  if (remembered === '') return null;
  const parsed = PriceFileMapping.safeParse(JSON.parse(remembered));
  return parsed.success ? parsed.data : null;
}

/** The place of each field, without its heading. */
export const placesOf = ({ columns }: PriceFileMapping) => ({
  number: columns.number.column,
  cost: columns.cost.column,
  description: columns.description?.column ?? null,
  listPrice: columns.listPrice?.column ?? null,
  packSize: columns.packSize?.column ?? null,
  coreCharge: columns.coreCharge?.column ?? null,
  supersededBy: columns.supersededBy?.column ?? null,
});

/** Fields of a mapping that name the same column as another one. */
export const columnsNamedTwice = (mapping: PriceFileMapping) => {
  const places = placesOf(mapping);
  return PRICE_FILE_FIELDS.filter(
    (field) =>
      places[field] !== null &&
      PRICE_FILE_FIELDS.some((other) => other !== field && places[other] === places[field]),
  );
};
