import { parse } from 'csv-parse/sync';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { PartId } from '../../shared/contract/ids.ts';
import { STOCK_REPORTS, type StockReportName } from '../../shared/work/parts/stock-reports.ts';
import { readPaper } from '../unit/paper/reading-back.ts';
import { openPartsShop, type PartsShop } from './parts-shop.ts';

let shop: PartsShop;
beforeEach(async () => {
  shop = await openPartsShop();
});
afterEach(() => shop.close());

const on = (day: string) => shop.setClock(`${day}T18:00:00.000Z`);

/** A row of a report's first table as its labels and cells. */
async function rowsOf(report: StockReportName, from: string, to: string, key?: string) {
  const { tables } = await shop.desk.parts.stockReport({ report, from, to });
  const table = tables.find((each) => each.key === key) ?? tables[0];
  const named = (row: readonly unknown[]) =>
    Object.fromEntries((table?.columns ?? []).map(({ label }, at) => [label, row[at]]));
  return {
    rows: (table?.rows ?? []).map(named),
    total: table?.total === null || table === undefined ? null : named(table.total),
  };
}

const receive = (partId: PartId, quantity: number) =>
  shop.desk.parts.move({ by: shop.by, partId, kind: 'received', quantity });

test('the worth of the stores at the end of a day is what it was then', async () => {
  on('2026-01-05');
  const piston = await shop.shelve('GP 300-1', 4_000, { cost: 1_250 });
  on('2026-02-10');
  await shop.desk.parts.move({
    by: shop.by,
    partId: piston,
    kind: 'scrapped',
    quantity: 1_000,
    reason: 'Cracked',
  });
  const then = await rowsOf('stock-value', '2026-02-09', '2026-02-09');
  expect(then.rows).toMatchObject([{ Part: 'GP 300-1', 'On hand': 4_000, Worth: 5_000 }]);
  const after = await rowsOf('stock-value', '2026-02-10', '2026-02-10');
  expect(after.total).toMatchObject({ Worth: 3_750 });
});

test('usage by month is issued less returned, in the shop’s own months', async () => {
  const { desk, by } = shop;
  on('2026-01-05');
  const piston = await shop.shelve('GP 300-1', 9_000, { cost: 1_000 });
  const jobId = await shop.jobFor([[piston, 5_000]]);
  const issue = (quantity: number) => desk.parts.issue({ by, jobId, number: 'GP 300-1', quantity });
  // The last evening of January in Chicago is February in UTC.
  shop.setClock('2026-02-01T03:00:00.000Z');
  await issue(3_000);
  on('2026-02-20');
  await issue(2_000);
  await desk.parts.takeBack({ by, jobId, partId: piston, quantity: 1_000, reason: '' });
  const { rows } = await rowsOf('stock-usage', '2026-01-01', '2026-03-31');
  expect(rows).toEqual([
    expect.objectContaining({
      Part: 'GP 300-1',
      'Jan 2026': 3_000,
      'Feb 2026': 1_000,
      Total: 4_000,
      Cost: 4_000,
    }),
  ]);
  const months = await rowsOf('stock-usage', '2026-01-01', '2026-03-31', 'months');
  // March is still to come.
  expect(months.rows.map((row) => [row.Month, row.Cost])).toEqual([
    ['2026-01', 3_000],
    ['2026-02', 1_000],
  ]);
  expect(months.total).toMatchObject({ Cost: 4_000 });
});

test('turns: cost of what was used, brought to a year, by the worth on average', async () => {
  const { desk, by } = shop;
  on('2026-01-01');
  const piston = await shop.shelve('GP 300-1', 10_000, { cost: 1_000 });
  const idle = await shop.shelve('GP 300-2', 1_000, { cost: 500 });
  const jobId = await shop.jobFor([[piston, 5_000]]);
  shop.setClock('2026-02-15T06:00:00.000Z');
  await desk.parts.issue({ by, jobId, number: 'GP 300-1', quantity: 5_000 });
  on('2026-06-01');
  await receive(idle, 1_000);
  // 31 days at 10,000, 14 of 28 at 5,000: what follows is a second calculation.
  const { rows, total } = await rowsOf('stock-turns', '2026-02-01', '2026-02-28');
  const [turned, still] = rows;
  expect(turned).toMatchObject({ 'Used, at cost': 5_000, 'Worth on average': 7_500 });
  expect(turned?.['Turns a year']).toBe(10 * Math.round((5_000 * 365 * 100) / (7_500 * 28)));
  expect(turned?.['Lasts, days']).toBe(42);
  expect(still).toMatchObject({
    'Used, at cost': 0,
    'Worth on average': 500,
    'Turns a year': 0,
    'Lasts, days': null,
  });
  expect(total).toMatchObject({ 'Used, at cost': 5_000, 'Worth on average': 8_000 });
  const ahead = await desk.parts.stockReport({
    report: 'stock-turns',
    from: '2027-01-01',
    to: '2027-01-31',
  });
  expect(ahead.tables[0]?.rows).toEqual([]);
});

test('dead stock was there before the first day, is there still, and none was used between', async () => {
  const { desk, by } = shop;
  on('2025-11-01');
  const dear = await shop.shelve('DEAD 2', 1_000, { cost: 9_000 });
  await shop.shelve('DEAD 1', 3_000, { cost: 100 });
  const live = await shop.shelve('LIVE', 3_000, { cost: 100 });
  const jobId = await shop.jobFor([
    [live, 1_000],
    [dear, 1_000],
  ]);
  on('2025-12-10');
  await desk.parts.issue({ by, jobId, number: 'DEAD 2', quantity: 1_000 });
  await desk.parts.takeBack({ by, jobId, partId: dear, quantity: 1_000, reason: '' });
  on('2026-02-10');
  await desk.parts.issue({ by, jobId, number: 'LIVE', quantity: 1_000 });
  await shop.shelve('NEW', 1_000, { cost: 100 });
  const { rows, total } = await rowsOf('dead-stock', '2026-01-01', '2026-03-31');
  expect(rows.map((row) => [row.Part, row['Used last']])).toEqual([
    ['DEAD 2', '2025-12-10'],
    ['DEAD 1', null],
  ]);
  expect(total).toMatchObject({ Worth: 9_300 });
});

test('shortages are what jobs miss, and shelves at their reorder point', async () => {
  const { desk, by } = shop;
  const piston = await shop.shelve('GP 300-1', 1_000);
  await desk.parts.amend({
    by,
    partId: piston,
    number: 'GP 300-1',
    description: 'Piston',
    reorderPoint: 2_000,
  });
  await shop.jobFor([[piston, 3_000]]);
  const jobs = await rowsOf('shortages', '2026-03-02', '2026-03-02');
  expect(jobs.rows).toMatchObject([{ Part: 'GP 300-1', Missing: 2_000, 'On order for it': 0 }]);
  const low = await rowsOf('shortages', '2026-03-02', '2026-03-02', 'shelves');
  expect(low.rows).toMatchObject([{ Part: 'GP 300-1', 'On hand': 1_000, Free: 0 }]);
});

test('every report is also a CSV that another library reads, and a PDF', async () => {
  const { desk } = shop;
  await shop.shelve('GP 300-1', 2_500, { cost: 1_000 });
  for (const report of STOCK_REPORTS) {
    const asked = { report, from: '2026-03-01', to: '2026-03-31' };
    const { tables, title } = await desk.parts.stockReport(asked);
    for (const { key, columns, rows } of tables) {
      const file = await desk.parts.stockReportFile({ ...asked, form: 'csv', table: key });
      const lines: string[][] = parse(Buffer.from(file.bytes, 'base64'));
      expect(lines).toHaveLength(rows.length + 1);
      expect(lines[0]).toHaveLength(columns.length);
    }
    const pdf = await desk.parts.stockReportFile({ ...asked, form: 'pdf' });
    const paper = await readPaper(new Uint8Array(Buffer.from(pdf.bytes, 'base64')));
    expect(paper.text).toContain(title);
  }
  const value = await desk.parts.stockReportFile({
    report: 'stock-value',
    from: '2026-03-31',
    to: '2026-03-31',
    form: 'csv',
  });
  const lines: string[][] = parse(Buffer.from(value.bytes, 'base64'));
  expect(lines[0]?.at(-1)).toBe('Worth, USD');
  expect(lines[1]?.slice(3)).toEqual(['2.500', 'pc', '10.00', '25.00']);
});
