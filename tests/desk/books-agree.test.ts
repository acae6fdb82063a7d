import { afterAll, beforeAll, expect, test } from 'vitest';
import type { JobId } from '../../shared/contract/ids.ts';
import type { ReportTable } from '../../shared/contract/till/index.ts';
import { sumMinor } from '../../shared/money/index.ts';
import type { ReportName } from '../../shared/work/reports.ts';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

/**
 * One shop, one day, all that the till can do: work clocked and invoiced with a discount on the whole and a
 * tax within the prices, paid too much, credited in part, given back; warranty work; work declined. Every
 * report has to agree with the accounts of the jobs.
 */
let shop: TestShop;
let work: JobId;
let comeback: JobId;
const DAY = { from: '2026-03-02', to: '2026-03-02' };

const bench = {
  kind: 'labour' as const,
  description: 'Rebuild',
  workKind: 'Bench work',
  unit: 'h',
  quantity: 2_000,
  unitPrice: 9_000,
};
const piston = {
  kind: 'part' as const,
  description: 'Piston',
  quantity: 1_000,
  unitPrice: 12_000,
  unitCost: 7_000,
};
const tank = { ...piston, description: 'Tank', unitPrice: 5_000, unitCost: null };

const takeIn = async (serial: string, minutes: number) => {
  const intake = plainIntake(shop.by);
  shop.setClock(`2026-03-02T15:${String(minutes).padStart(2, '0')}:00.000Z`);
  const { jobId } = await shop.desk.counter.takeIn({
    ...intake,
    customer: { which: 'new', name: `Owner of ${serial}` },
    machine: { ...intake.machine, serial },
    spendingLimit: 100_000,
  });
  return jobId;
};

beforeAll(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  await desk.office.setShop({
    ...(await desk.office.shop({})),
    by,
    taxes: [{ name: 'VAT', ratePpm: 200_000, kinds: ['part'] }],
  });
  await desk.till.setRules({
    by,
    rules: {
      pricesIncludeTax: true,
      labourCost: 4_000,
      labourRates: [{ name: 'Bench work', rate: 9_000 }],
    },
  });
  work = await takeIn('A-1', 0);
  comeback = await takeIn('B-2', 10);
  shop.setClock('2026-03-02T20:00:00.000Z');
  for (const [jobId, from, until] of [
    [work, '15:00', '16:30'],
    [comeback, '17:00', '17:45'],
  ] as const)
    await desk.till.enterHours({
      by,
      staffId: by,
      jobId,
      workKind: 'Bench work',
      startedAt: `2026-03-02T${from}:00.000Z`,
      endedAt: `2026-03-02T${until}:00.000Z`,
      reason: 'The tablet was flat',
    });
  const { estimates } = await desk.till.writeEstimate({
    by,
    jobId: work,
    lines: [bench, piston, tank],
  });
  const estimateId = estimates[0]?.id;
  if (estimateId === undefined) throw new Error('No estimate was written.');
  await desk.till.approve({
    by,
    jobId: work,
    estimateId,
    how: 'telephone',
    approvedBy: 'Owner of A-1',
    declined: [2],
    amount: 30_000,
  });
  const { invoice } = await desk.till.issueInvoice({
    by,
    jobId: work,
    lines: [bench, piston],
    discount: { by: 'share', ppm: 100_000 },
  });
  if (invoice === null) throw new Error('No invoice was issued.');
  const paid = { by, jobId: work, method: 'cash' } as const;
  await desk.till.takePayment({ ...paid, kind: 'payment', amount: 30_000, keepOver: true });
  await desk.till.creditInvoice({
    by,
    invoiceId: invoice.id,
    lines: [{ line: 1 }],
    reason: 'The piston was the wrong one',
  });
  await desk.till.takePayment({ ...paid, kind: 'refund', amount: 5_000 });
});
afterAll(() => shop.close());

const tableOf = async (report: ReportName, key: string): Promise<ReportTable> => {
  const { tables } = await shop.desk.till.report({ report, ...DAY });
  const table = tables.find((each) => each.key === key);
  if (table === undefined) throw new Error(`The report ${report} has no table ${key}.`);
  return table;
};

/** A cell by what stands in its row, or of the last line. */
const figure = ({ columns, rows, total }: ReportTable, row: string | null, label: string) => {
  const index = columns.findIndex((column) => column.label === label);
  return (row === null ? total : rows.find((each) => each.includes(row)))?.[index];
};

test('the accounts of the books are those of the jobs', async () => {
  const { desk } = shop;
  const jobs = [
    await desk.till.account({ jobId: work }),
    await desk.till.account({ jobId: comeback }),
  ];
  const accounts = await tableOf('bookkeeping', 'accounts');
  const open = sumMinor(jobs.flatMap(({ invoices }) => invoices.map((invoice) => invoice.open)));
  const unapplied = sumMinor(jobs.map((job) => job.unapplied));
  // 270.00 invoiced, 108.00 of it credited: 162.00 of 300.00 is applied, 50.00 was given back.
  expect(open).toBe(0);
  expect(unapplied).toBe(8_800);
  expect(figure(accounts, 'Customers, owed to us', 'After')).toBe(open);
  expect(figure(accounts, 'Customers, deposits held', 'After')).toBe(-unapplied);
  expect(figure(accounts, 'Cash', 'After')).toBe(25_000);
  // The piston went back, and its tax with it; the labour stays, at 10 % off.
  expect(figure(accounts, 'Tax, VAT 20 %', 'After')).toBe(0);
  expect(figure(accounts, 'Sales, parts', 'After')).toBe(0);
  expect(figure(accounts, 'Sales, labour', 'After')).toBe(-16_200);
  expect(figure(accounts, null, 'After')).toBe(0);
  expect(figure(await tableOf('deposits', 'deposits'), null, 'Held')).toBe(unapplied);
  expect((await desk.till.receivables({ on: DAY.to })).open).toBe(open);
});

test('a customer’s account closes with what the job says is due', async () => {
  const { desk } = shop;
  const { customerId, due } = await desk.till.account({ jobId: work });
  const ledger = await desk.till.customerLedger({ customerId, ...DAY });
  expect(ledger.closing).toBe(due);
  expect(ledger.entries.map(({ what, amount }) => [what, amount])).toEqual([
    ['invoice', 27_000],
    ['payment', -30_000],
    ['credit-note', -10_800],
    ['refund', 5_000],
  ]);
});

test('sales by kind and by tax are without the tax within the prices', async () => {
  const kinds = await tableOf('sales', 'kinds');
  expect(figure(kinds, 'Part', 'Invoiced')).toBe(9_000);
  expect(figure(kinds, 'Part', 'Credited')).toBe(-9_000);
  expect(figure(kinds, 'Labour', 'Net')).toBe(16_200);
  const taxes = await tableOf('sales', 'taxes');
  expect(figure(taxes, 'VAT', 'Invoiced')).toBe(1_800);
  expect(figure(taxes, 'VAT', 'Net')).toBe(0);
});

test('margin counts the clocked time and what the part cost, once', async () => {
  const jobs = await tableOf('margin', 'jobs');
  // 252.00 less 90.00 credited, less an hour and a half at 40.00 and the piston at 70.00.
  expect(figure(jobs, null, 'Sales')).toBe(16_200);
  expect(figure(jobs, null, 'Cost')).toBe(13_000);
  expect(figure(await tableOf('margin', 'kinds'), 'Bench work', 'Margin')).toBe(10_200);
});

test('hours sold stand against hours worked, on the comeback too', async () => {
  const kinds = await tableOf('hours', 'kinds');
  expect(figure(kinds, 'Bench work', 'Sold')).toBe(2_000);
  expect(figure(kinds, 'Bench work', 'Worked')).toBe(2_250);
  expect(figure(kinds, 'Bench work', 'Sold of worked')).toBe(889_000);
  expect(figure(await tableOf('hours', 'people'), 'Ruth Okafor', 'Jobs')).toBe(2);
});

test('declined work is kept, to be asked about again', async () => {
  const declined = await tableOf('declined', 'declined');
  expect(figure(declined, 'Tank', 'Amount')).toBe(5_000);
  expect(declined.rows).toHaveLength(1);
});

test('a day on which more was given back than taken is counted below zero', async () => {
  const { desk, by } = shop;
  const jobId = await takeIn('C-3', 20);
  const day = '2026-03-03';
  shop.setClock(`${day}T15:00:00.000Z`);
  const money = { by, jobId, amount: 2_000 };
  await desk.till.takePayment({ ...money, kind: 'deposit', method: 'cash' });
  await desk.till.takePayment({ ...money, kind: 'refund', method: 'transfer' });
  const { taken } = await desk.till.drawer({ day });
  expect(taken).toEqual({ cash: 2_000, card: 0, transfer: -2_000, cheque: 0 });
  const { cashUps } = await desk.till.cashUp({ by, day, opening: 0, counted: taken });
  expect(cashUps.map(({ difference }) => difference)).toEqual([0]);
});
