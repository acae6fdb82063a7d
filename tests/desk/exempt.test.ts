import { execFileSync } from 'node:child_process';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { drawPaper } from '../../electron/paper/index.ts';
import type { JobId, PaperId } from '../../shared/contract/ids.ts';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

/** A customer with a certificate, where the prices include the tax: it is taken out of them. */

let shop: TestShop;
let jobId: JobId;

const lines = [
  { kind: 'part' as const, description: 'Piston', quantity: 1_000, unitPrice: 12_000 },
  { kind: 'labour' as const, description: 'Rebuild', unit: 'h', quantity: 1_000, unitPrice: 8_000 },
];

beforeAll(async () => {
  shop = await openTestShop({ drawPaper });
  const { desk, by } = shop;
  await desk.office.setShop({
    ...(await desk.office.shop({})),
    by,
    taxes: [{ name: 'VAT', ratePpm: 200_000, kinds: ['part'] }],
  });
  await desk.till.setRules({ by, rules: { pricesIncludeTax: true } });
  const job = await desk.counter.takeIn({ ...plainIntake(by), spendingLimit: 50_000 });
  jobId = job.jobId;
  await desk.till.setCustomerTerms({
    by,
    customerId: job.customerId,
    exemptCertificate: 'EX-4471',
  });
});
afterAll(() => shop.close());

const textOf = async (id: PaperId) => {
  const { pdf } = await shop.desk.office.paper({ id });
  return execFileSync('pdftotext', ['-layout', '-', '-'], {
    input: Buffer.from(pdf, 'base64'),
    encoding: 'utf8',
  });
};

test('is asked for the prices without it, on the estimate and its paper', async () => {
  const { desk, by } = shop;
  // 20 % within 120.00 is 20.00; labour bears none. 10 % off leaves 108.00 with 18.00 in it.
  const discount = { by: 'share', ppm: 100_000 } as const;
  const { estimates } = await desk.till.writeEstimate({ by, jobId, lines, discount });
  const totals = estimates[0]?.totals;
  expect(totals).toMatchObject({
    subtotal: 20_000,
    discount: 2_000,
    taxes: [],
    exemptBy: 'EX-4471',
    takenOut: [{ name: 'VAT', base: 10_800, amount: 1_800 }],
    total: 16_200,
  });
  const paper = estimates[0]?.paper.id;
  if (paper === undefined) throw new Error('No estimate was written.');
  const text = await textOf(paper);
  expect(text).toMatch(/VAT 20 % taken out of \$108\.00\s+-\$18\.00/);
  expect(text).toMatch(/Total\s+\$162\.00/);
  expect(text).toContain('No tax: exempt by certificate EX-4471');
});

test('is invoiced, credited and booked so, with no tax owed', async () => {
  const { desk, by } = shop;
  const { invoice } = await desk.till.issueInvoice({ by, jobId, lines });
  expect(invoice?.totals.total).toBe(18_000);
  if (invoice === null) throw new Error('No invoice was issued.');
  expect(await textOf(invoice.paper.id)).toMatch(/taken out of \$120\.00\s+-\$20\.00/);

  const account = await desk.till.creditInvoice({
    by,
    invoiceId: invoice.id,
    lines: [{ line: 0, amount: 6_000 }],
    reason: 'A cheaper piston was fitted',
  });
  // Half of the piston: 60.00 with 10.00 in it.
  expect(account.invoices[0]).toMatchObject({ open: 13_000 });

  const { tables } = await desk.till.report({
    report: 'bookkeeping',
    from: '2026-03-01',
    to: '2026-03-31',
  });
  const accounts = tables.find(({ key }) => key === 'accounts');
  const figures = (accounts?.rows ?? []).map((row) => [row[0], row.at(-1)]);
  expect(figures).toEqual(
    expect.arrayContaining([
      ['Customers, owed to us', 13_000],
      ['Sales, parts', -5_000],
      ['Sales, labour', -8_000],
    ]),
  );
  expect(figures.some(([name]) => String(name).startsWith('Tax'))).toBe(false);
});
