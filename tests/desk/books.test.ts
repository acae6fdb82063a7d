import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { drawPaper } from '../../electron/paper/index.ts';
import type { CustomerId, JobId } from '../../shared/contract/ids.ts';
import type { ReportTable } from '../../shared/contract/till/index.ts';
import { REPORTS } from '../../shared/work/reports.ts';
import { openTestShop, plainIntake, type TestShop, typed } from './shop.ts';

/**
 * A shop with four jobs in March 2026 (Chicago), 10 % tax on parts:
 * - Greta, 3 March: $330.00 invoiced, $100.00 of deposit before, $50.00 in cash after.
 * - Bo, 20 January: $110.00 invoiced, nothing paid.
 * - Cy, 5 March: a deposit of $80.00, no invoice; an estimate that waits.
 */
let shop: TestShop;
const jobs: Record<string, { jobId: JobId; customerId: CustomerId; code: string }> = {};

const labour = (hours: number) => ({
  kind: 'labour' as const,
  description: 'Rebuild',
  unit: 'h',
  quantity: hours * 1000,
  unitPrice: 10_000,
  unitCost: 4_000,
});
const part = (unitPrice: number) => ({
  kind: 'part' as const,
  description: 'Piston',
  quantity: 1000,
  unitPrice,
  unitCost: 6_000,
});

async function takeIn(name: string, on: string) {
  shop.setClock(`${on}T15:00:00.000Z`);
  const intake = plainIntake(shop.by);
  const { jobId, customerId, code } = await shop.desk.counter.takeIn({
    ...intake,
    customer: { which: 'new', name, phone: '(312) 555-0142' },
    machine: { ...intake.machine, serial: `S-${name}` },
    spendingLimit: 1_000_000,
    signature: typed(name),
  });
  jobs[name] = { jobId, customerId, code };
  return jobId;
}

const jobOf = (name: string) => {
  const job = jobs[name];
  if (job === undefined) throw new Error(`Nobody is called ${name}.`);
  return job;
};

beforeAll(async () => {
  shop = await openTestShop({ drawPaper });
  const { desk, by } = shop;
  await desk.office.setShop({
    ...(await desk.office.shop({})),
    by,
    taxes: [{ name: 'State', ratePpm: 100_000, kinds: ['part'] }],
  });
  const bo = await takeIn('Bo', '2026-01-20');
  await desk.till.writeEstimate({ by, jobId: bo, lines: [part(10_000)] });
  await desk.till.issueInvoice({ by, jobId: bo });

  const greta = await takeIn('Greta', '2026-03-02');
  await desk.till.takePayment({
    by,
    jobId: greta,
    kind: 'deposit',
    method: 'card',
    amount: 10_000,
  });
  shop.setClock('2026-03-03T15:00:00.000Z');
  await desk.till.writeEstimate({ by, jobId: greta, lines: [labour(2), part(10_000)] });
  await desk.till.issueInvoice({ by, jobId: greta, lines: [labour(2.2), part(10_000)] });
  await desk.till.takePayment({ by, jobId: greta, kind: 'payment', method: 'cash', amount: 5_000 });

  const cy = await takeIn('Cy', '2026-03-05');
  await desk.till.writeEstimate({ by, jobId: cy, lines: [part(40_000)] });
  await desk.till.takePayment({ by, jobId: cy, kind: 'deposit', method: 'cash', amount: 8_000 });
  shop.setClock('2026-03-31T15:00:00.000Z');
});
afterAll(() => shop.close());

const march = { from: '2026-03-01', to: '2026-03-31' };

const tableOf = async (report: (typeof REPORTS)[number], key: string, time = march) => {
  const { tables } = await shop.desk.till.report({ report, ...time });
  const table = tables.find((each) => each.key === key);
  if (table === undefined) throw new Error(`The report ${report} has no table ${key}.`);
  return table;
};

const figure = ({ columns, rows, total }: ReportTable, row: string | null, label: string) => {
  const index = columns.findIndex((column) => column.label === label);
  const cells = row === null ? total : rows.find((each) => each.includes(row));
  return cells?.[index];
};

describe('what customers owe', () => {
  test('by customer and age, the oldest first; who owes nothing is not listed', async () => {
    const owed = await shop.desk.till.receivables({ on: '2026-03-31' });
    expect(owed.customers.map(({ name, open }) => [name, open])).toEqual([
      ['Bo', 11_000],
      ['Greta', 18_000],
    ]);
    // 70 days after 20 January; 28 days after 3 March.
    expect(owed.aged).toMatchObject({ 'to-30': 18_000, 'to-90': 11_000 });
    expect(owed.open).toBe(29_000);
  });

  test('as it stood at the end of an earlier day', async () => {
    const owed = await shop.desk.till.receivables({ on: '2026-02-19', basis: 'invoice-date' });
    expect(owed.customers.map(({ name, open }) => [name, open])).toEqual([['Bo', 11_000]]);
    expect(owed.aged['to-30']).toBe(11_000);
  });

  test('a customer’s account runs from what was owed before to what is owed', async () => {
    const { customerId } = jobOf('Greta');
    const ledger = await shop.desk.till.customerLedger({ customerId, ...march });
    expect(ledger.entries.map(({ what, amount, balance }) => [what, amount, balance])).toEqual([
      ['deposit', -10_000, -10_000],
      ['invoice', 33_000, 23_000],
      ['payment', -5_000, 18_000],
    ]);
    expect(ledger).toMatchObject({ opening: 0, closing: 18_000, unapplied: 0 });
    const later = await shop.desk.till.customerLedger({
      customerId,
      from: '2026-03-04',
      to: '2026-03-31',
    });
    expect(later).toMatchObject({ opening: 18_000, entries: [], closing: 18_000 });
  });

  test('a statement is a paper with a number of its own, and of no job', async () => {
    const { desk, by } = shop;
    const { customerId, jobId } = jobOf('Greta');
    const paper = await desk.till.issueStatement({ by, customerId, ...march });
    expect(paper).toMatchObject({ kind: 'statement', number: 'S-000001' });
    expect((await desk.office.paper({ id: paper.id })).pdf.slice(0, 5)).toBe(
      btoa('%PDF').slice(0, 5),
    );
    expect((await desk.office.papers({ jobId })).map(({ kind }) => kind)).not.toContain(
      'statement',
    );
    await expect(
      desk.till.issueStatement({ by, customerId, from: '2025-01-01', to: '2025-01-31' }),
    ).rejects.toMatchObject({ code: 'NOTHING_ON_ACCOUNT', defined: true });

    const next = await desk.till.issueStatement({ by, customerId, ...march, from: '2026-03-04' });
    expect(await desk.till.statements({ customerId })).toEqual([
      { paper: next, from: '2026-03-04', to: '2026-03-31', closing: 18_000 },
      { paper, ...march, closing: 18_000 },
    ]);
    expect(await desk.till.statements({ customerId: jobOf('Cy').customerId })).toEqual([]);
  });
});

describe('the drawer', () => {
  test('what came in is expected; a difference needs a word, and a count again stands', async () => {
    const { desk, by } = shop;
    const day = '2026-03-03';
    const before = await desk.till.drawer({ day });
    expect(before).toMatchObject({ left: null, taken: { cash: 5_000, card: 0 }, cashUps: [] });
    const count = (cash: number, note = '') =>
      desk.till.cashUp({
        by,
        day,
        opening: 10_000,
        counted: { cash, card: 0, transfer: 0, cheque: 0 },
        note,
      });
    await expect(count(14_900)).rejects.toMatchObject({
      code: 'DIFFERENCE_UNEXPLAINED',
      data: { difference: -100 },
    });
    await count(14_900, 'A dollar of change too much');
    const { cashUps } = await count(15_000);
    expect(cashUps.map(({ difference, note }) => [difference, note])).toEqual([
      [-100, 'A dollar of change too much'],
      [0, ''],
    ]);
    expect((await desk.till.drawer({ day: '2026-03-05' })).left).toBe(15_000);
  });

  test('too much in one method does not hide what is missing in another', async () => {
    const { desk, by } = shop;
    const counted = { cash: 0, card: 8_000, transfer: 0, cheque: 0 };
    await expect(
      desk.till.cashUp({ by, day: '2026-03-05', opening: 0, counted }),
    ).rejects.toMatchObject({ code: 'DIFFERENCE_UNEXPLAINED', data: { difference: 0 } });
  });

  test('a day that is still to come can’t be counted', async () => {
    const { desk, by } = shop;
    const counted = { cash: 0, card: 0, transfer: 0, cheque: 0 };
    await expect(
      desk.till.cashUp({ by, day: '2026-04-02', opening: 0, counted }),
    ).rejects.toMatchObject({ code: 'DAY_TO_COME' });
  });
});

describe('reports', () => {
  test('sales and tax of the time', async () => {
    const kinds = await tableOf('sales', 'kinds');
    expect(figure(kinds, 'Labour', 'Net')).toBe(22_000);
    expect(figure(kinds, 'Part', 'Net')).toBe(10_000);
    const taxes = await tableOf('sales', 'taxes');
    expect(taxes.rows).toEqual([['State', 100_000, 10_000, 1_000, 0, 1_000]]);
    expect(figure(await tableOf('sales', 'bills'), null, 'Total')).toBe(33_000);
  });

  test('margin by job and by kind of work come to the same', async () => {
    const byJob = await tableOf('margin', 'jobs');
    // 320.00 less 2.2 h at 40.00 and a piston at 60.00.
    expect(figure(byJob, jobOf('Greta').code, 'Margin')).toBe(17_200);
    expect(figure(byJob, jobOf('Greta').code, 'Of sales')).toBe(538_000);
    const byKind = await tableOf('margin', 'kinds');
    for (const label of ['Sales', 'Cost', 'Margin'])
      expect(figure(byKind, null, label)).toBe(figure(byJob, null, label));
  });

  test('hours sold, without a clock', async () => {
    const kinds = await tableOf('hours', 'kinds');
    expect(figure(kinds, null, 'Sold')).toBe(2_200);
    expect(figure(kinds, null, 'Sold of worked')).toBeNull();
  });

  test('open estimates, deposits held and what is owed', async () => {
    const { rows } = await tableOf('open-estimates', 'estimates');
    expect(rows.map(([, job]) => job)).toEqual([jobOf('Cy').code]);
    expect(figure(await tableOf('deposits', 'deposits'), null, 'Held')).toBe(8_000);
    expect(figure(await tableOf('receivables', 'customers'), null, 'Open')).toBe(29_000);
    expect(figure(await tableOf('receivables', 'invoices'), null, 'Open')).toBe(29_000);
  });

  test('the accountant’s export balances, and agrees with what is owed and held', async () => {
    const lines = await tableOf('bookkeeping', 'lines');
    expect(figure(lines, null, 'Debit')).toBe(figure(lines, null, 'Credit'));
    for (const entry of Map.groupBy(lines.rows, ([number]) => number).values()) {
      const sum = (label: string) => {
        const index = lines.columns.findIndex((column) => column.label === label);
        return entry.reduce((all, row) => all + Number(row[index]), 0);
      };
      expect(sum('Debit')).toBe(sum('Credit'));
    }
    const accounts = await tableOf('bookkeeping', 'accounts');
    expect(figure(accounts, 'Customers, owed to us', 'Before')).toBe(11_000);
    expect(figure(accounts, 'Customers, owed to us', 'After')).toBe(29_000);
    expect(figure(accounts, 'Customers, deposits held', 'After')).toBe(-8_000);
    expect(figure(accounts, 'Cash', 'After')).toBe(13_000);
    expect(figure(accounts, 'Tax, State 10 %', 'After')).toBe(-2_000);
    expect(figure(accounts, null, 'After')).toBe(0);
  });

  test('an entry keeps its number whatever the first day of the export', async () => {
    const all = await tableOf('bookkeeping', 'lines', { from: '2026-01-01', to: '2026-03-31' });
    const late = await tableOf('bookkeeping', 'lines', { from: '2026-03-05', to: '2026-03-31' });
    expect(all.rows.slice(-late.rows.length)).toEqual(late.rows);
  });

  test.each(REPORTS)('%s is a PDF, and each of its tables CSV of one width', async (report) => {
    const { desk } = shop;
    const { tables } = await desk.till.report({ report, ...march });
    for (const table of tables) {
      const file = await desk.till.reportFile({ report, ...march, form: 'csv', table: table.key });
      const text = Buffer.from(file.bytes, 'base64').toString();
      const records: string[][] = parse(text);
      expect(records).toHaveLength(table.rows.length + 1);
      expect(records.every((record) => record.length === table.columns.length)).toBe(true);
      expect(text.endsWith('\r\n')).toBe(true);
    }
    const pdf = await desk.till.reportFile({ report, ...march, form: 'pdf' });
    expect(Buffer.from(pdf.bytes, 'base64').subarray(0, 5).toString()).toBe('%PDF-');
    expect(pdf.fileName).toMatch(/^[a-z-]+-[\d-]+(to-[\d-]+)?\.pdf$/);
  });

  test('CSV has plain decimals, ISO dates, and a byte-order mark when asked', async () => {
    const file = await shop.desk.till.reportFile({
      report: 'sales',
      ...march,
      form: 'csv',
      table: 'bills',
      mark: true,
    });
    const text = Buffer.from(file.bytes, 'base64').toString();
    expect(text).toBe(
      `\uFEFFDocument,Date,Customer,Job,"Without tax, USD","Tax, USD","Total, USD"\r\nI-000002,2026-03-03,Greta,${jobOf('Greta').code},320.00,10.00,330.00\r\n`,
    );
    await expect(
      shop.desk.till.reportFile({ report: 'sales', ...march, form: 'csv', table: 'no' }),
    ).rejects.toMatchObject({ code: 'NOT_FOUND' });
  });

  test('a time that ends before it begins is refused at its last day', async () => {
    const backwards = { from: '2026-03-02', to: '2026-03-01' };
    await expect(shop.desk.till.report({ report: 'sales', ...backwards })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { issues: [{ path: 'to' }] },
    });
  });
});
