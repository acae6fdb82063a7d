import { performance } from 'node:perf_hooks';
import type { ContractRouterClient } from '@orpc/contract';
import type Database from 'better-sqlite3';
import { parse } from 'csv-parse/sync';
import type { StaffId } from '../../shared/contract/ids.ts';
import type { Contract } from '../../shared/contract/index.ts';
import { madePriceFile } from '../desk/made-price-file.ts';
import { mappingFrom } from '../desk/price-file-shop.ts';

export const PRICE_FILE_LINES = 100_000;
const ROUNDS = 3;

const middle = (times: number[]): number =>
  times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;

/**
 * A price file read and applied, as the desk does it, and the same file parsed and its rows put into a
 * table by the same two libraries with nothing about them. Milliseconds, the middle of some rounds.
 */
export async function priceFileTimes(
  desk: ContractRouterClient<Contract>,
  by: StaffId,
  bare: Database.Database,
): Promise<{ ours: number; bare: number }> {
  // No line with its quotation marks out of order, at which the bare parser gives up.
  const { text } = madePriceFile(PRICE_FILE_LINES, { broken: false });
  const { id: supplierId } = await desk.parts.addSupplier({ by, name: 'Prairie Line' });
  const file = { supplierId, fileName: 'list.csv', bytes: Buffer.from(text).toString('base64') };
  const mapping = mappingFrom(await desk.parts.sketchPriceFile(file));
  const ours: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const start = performance.now();
    const { id } = await desk.parts.readPriceFile({ by, ...file, mapping, wait: true });
    await desk.parts.applyPriceFile({ by, id });
    ours.push(performance.now() - start);
    await desk.parts.undoPriceFile({ by, id });
  }

  bare.exec(
    'CREATE TABLE offer (number TEXT, name TEXT, cost TEXT, list TEXT, pack TEXT, core TEXT, replaced TEXT) STRICT',
  );
  const insert = bare.prepare('INSERT INTO offer VALUES (?, ?, ?, ?, ?, ?, ?)');
  const parseAndInsert = bare.transaction(() => {
    for (const row of parse(text, { delimiter: ';' })) insert.run(row);
  });
  const theirs: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const start = performance.now();
    parseAndInsert();
    theirs.push(performance.now() - start);
    bare.exec('DELETE FROM offer');
  }
  return { ours: middle(ours), bare: middle(theirs) };
}
