import readWorkbook, { InvalidInputError, InvalidSpreadsheetError } from 'read-excel-file/node';
import type { Cell } from '../../../../shared/work/price-file/line.ts';

export interface Sheet {
  name: string;
  rows: Cell[][];
}

/** An XLSX workbook is a ZIP archive. */
export const isWorkbook = (bytes: Buffer): boolean =>
  bytes.subarray(0, 4).equals(Buffer.from('PK\x03\x04', 'latin1'));

/** The sheets of a workbook that have any rows; null for an archive that holds no workbook. */
export async function sheetsOf(bytes: Buffer): Promise<Sheet[] | null> {
  try {
    const sheets = await readWorkbook(bytes);
    return sheets
      .filter(({ data }) => data.length > 0)
      .map(({ sheet, data }) => ({ name: sheet, rows: data.map((row) => row.map(cellOf)) }));
  } catch (error) {
    if (error instanceof InvalidInputError || error instanceof InvalidSpreadsheetError) return null;
    throw error;
  }
}

function cellOf(value: unknown): Cell {
  if (typeof value === 'string' || typeof value === 'number' || value instanceof Date) return value;
  return typeof value === 'boolean' ? String(value) : '';
}
