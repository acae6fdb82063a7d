import { sql } from 'drizzle-orm';
import type { WriteStore } from '../../../../db/store.ts';

/** A line as the store keeps it until its file is applied or put away. */
export interface KeptLine {
  line: number;
  problem: string;
  raw: string;
  number: string;
  numberKey: string;
  description: string;
  cost: number;
  listPrice: number | null;
  packSize: number;
  coreCharge: number;
  supersededBy: string;
}

/** Keeps lines of a file in one statement: a thousand statements would take several times as long. */
export function keepLines(store: WriteStore, fileId: string, lines: readonly KeptLine[]): void {
  const rows = lines.map((line) => [
    line.line,
    line.problem,
    line.raw,
    line.number,
    line.numberKey,
    line.description,
    line.cost,
    line.listPrice,
    line.packSize,
    line.coreCharge,
    line.supersededBy,
  ]);
  store.run(sql`
    INSERT INTO price_file_line (file_id, line, problem, raw, number, number_key, description, cost,
      list_price, pack_size, core_charge, superseded_by)
    SELECT ${fileId}, value ->> 0, value ->> 1, value ->> 2, value ->> 3, value ->> 4, value ->> 5,
      value ->> 6, value ->> 7, value ->> 8, value ->> 9, value ->> 10
    FROM json_each(${JSON.stringify(rows)})`);
}
