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

/** Keeps lines of a file in one statement: a thousand statements would take a thousand times as long. */
export function keepLines(store: WriteStore, fileId: string, lines: readonly KeptLine[]): void {
  store.run(sql`
    INSERT INTO price_file_line (file_id, line, problem, raw, number, number_key, description, cost,
      list_price, pack_size, core_charge, superseded_by)
    SELECT ${fileId}, value ->> 'line', value ->> 'problem', value ->> 'raw', value ->> 'number',
      value ->> 'numberKey', value ->> 'description', value ->> 'cost', value ->> 'listPrice',
      value ->> 'packSize', value ->> 'coreCharge', value ->> 'supersededBy'
    FROM json_each(${JSON.stringify(lines)})`);
}
