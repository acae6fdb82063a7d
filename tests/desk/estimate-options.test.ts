import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { EstimateId, JobId } from '../../shared/contract/ids.ts';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

/** Options side by side of which the customer takes one, what they decline of it, and how long it holds. */

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop();
});
afterAll(() => shop.close());

const line = (description: string, unitPrice: number) => ({
  kind: 'fee' as const,
  description,
  quantity: 1_000,
  unitPrice,
});
const REPAIR = { label: 'Repair', lines: [line('Decarbonize', 9_000), line('New plug', 800)] };
const REBUILD = {
  label: 'Rebuild',
  lines: [line('Bore and hone', 8_500), line('Piston', 6_000), line('Recoil rope', 1_500)],
};
const REPLACE = {
  label: 'Replace the engine',
  lines: [line('Short engine', 70_000)],
  discount: { by: 'amount' as const, amount: 5_000 },
};

let serial = 0;
let jobId: JobId;
beforeEach(async () => {
  serial += 1;
  shop.setClock('2026-03-02T15:00:00.000Z');
  const intake = plainIntake(shop.by);
  const taken = await shop.desk.counter.takeIn({
    ...intake,
    spendingLimit: null,
    machine: { ...intake.machine, serial: `FM-7 ${serial}` },
  });
  jobId = taken.jobId;
});

const written = async (extra: { validUntil?: string | null } = {}) => {
  const account = await shop.desk.till.writeEstimate({
    by: shop.by,
    jobId,
    options: [REPAIR, REBUILD, REPLACE],
    ...extra,
  });
  const [estimate] = account.estimates;
  if (estimate === undefined) throw new Error('No estimate was written.');
  return estimate;
};

const approve = (estimateId: EstimateId, more: { option?: string; declined?: number[] } = {}) =>
  shop.desk.till.approve({
    by: shop.by,
    jobId,
    estimateId,
    how: 'telephone',
    approvedBy: 'Greta Lindqvist',
    amount: 16_000,
    note: 'Leave the rope, he says.',
    ...more,
  });

test('three options are written, each with its own figures', async () => {
  const { options, totals, lines } = await written();
  expect(options.map(({ key, label, totals: { total } }) => [key, label, total])).toEqual([
    ['a', 'Repair', 9_800],
    ['b', 'Rebuild', 16_000],
    ['c', 'Replace the engine', 65_000],
  ]);
  expect(totals).toEqual(options[0]?.totals);
  expect(lines).toEqual(options[0]?.lines);
});

test('lines or options, not neither and not both; no name twice', async () => {
  const { desk, by } = shop;
  const bare = { by, jobId };
  await expect(desk.till.writeEstimate(bare)).rejects.toMatchObject({ code: 'BAD_INPUT' });
  await expect(
    desk.till.writeEstimate({ ...bare, lines: REPAIR.lines, options: [REBUILD] }),
  ).rejects.toMatchObject({ code: 'BAD_INPUT' });
  await expect(
    desk.till.writeEstimate({ ...bare, options: [REPAIR, REPAIR] }),
  ).rejects.toMatchObject({ data: { issues: [{ path: 'options.1.label' }] } });
});

describe('an approval', () => {
  test('says which option, when there are several', async () => {
    const { id } = await written();
    for (const option of [undefined, 'd'])
      await expect(approve(id, option === undefined ? {} : { option })).rejects.toMatchObject({
        code: 'OPTION_WANTED',
        data: { options: [{ key: 'a' }, { key: 'b' }, { key: 'c' }] },
      });
  });

  test('keeps what was declined, and the invoice bills the rest', async () => {
    const { id } = await written();
    const { approvals } = await approve(id, { option: 'b', declined: [2] });
    expect(approvals).toMatchObject([
      {
        option: 'b',
        note: 'Leave the rope, he says.',
        declined: [{ line: 2, description: 'Recoil rope', amount: 1_500 }],
      },
    ]);
    const { invoice } = await shop.desk.till.issueInvoice({ by: shop.by, jobId });
    expect(invoice?.totals.total).toBe(14_500);
    expect(invoice?.lines.map(({ description }) => description)).toEqual([
      'Bore and hone',
      'Piston',
    ]);
  });

  test('names lines that are there, and leaves at least one', async () => {
    const { id } = await written();
    await expect(approve(id, { option: 'c', declined: [1] })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { issues: [{ path: 'declined.0' }] },
    });
    await expect(approve(id, { option: 'c', declined: [0] })).rejects.toMatchObject({
      code: 'NOTHING_TAKEN',
    });
  });
});

describe('an estimate is good', () => {
  test('for the shop’s usual days when nothing is said, and for ever when that is said', async () => {
    expect((await written()).validUntil).toBe('2026-04-01');
    const { estimates } = await shop.desk.till.writeEstimate({
      by: shop.by,
      jobId,
      lines: REPAIR.lines,
      validUntil: null,
    });
    expect(estimates[1]?.validUntil).toBeNull();
  });

  test('on its last day, and not on the day after', async () => {
    const { id } = await written({ validUntil: '2026-03-10' });
    // Chicago is at UTC-5 by then: the first is still the tenth there, the second the eleventh.
    shop.setClock('2026-03-11T04:00:00.000Z');
    await approve(id, { option: 'a' });
    shop.setClock('2026-03-11T06:00:00.000Z');
    await expect(approve(id, { option: 'a' })).rejects.toMatchObject({
      code: 'ESTIMATE_EXPIRED',
      data: { validUntil: '2026-03-10' },
    });
  });
});
