import { afterAll, beforeAll, expect, test } from 'vitest';
import type { StaffId } from '../../shared/contract/ids.ts';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

/** What the shop sets about prices and customers, through the desk. */

let shop: TestShop;
let helper: StaffId;
beforeAll(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  helper = (await desk.office.addStaff({ by, name: 'Ivo Brandt', role: 'counter' })).id;
});
afterAll(() => shop.close());

const RULES = {
  labourRates: [{ name: 'Machining', rate: 11_000 }],
  markup: [
    { upTo: 1_000, markupPpm: 1_000_000 },
    { upTo: null, markupPpm: 400_000 },
  ],
  supplies: { ppm: 50_000, kinds: ['labour' as const], cap: 2_000 },
};

test('rules begin with the contract’s defaults; the owner alone changes them', async () => {
  const { desk, by } = shop;
  expect(await desk.till.rules({})).toMatchObject({
    labourRates: [],
    tolerancePpm: 0,
    estimateDays: 30,
  });
  await expect(desk.till.setRules({ by: helper, rules: RULES })).rejects.toMatchObject({
    code: 'OWNER_WANTED',
  });
  await desk.till.setRules({ by, rules: RULES });
  expect(await desk.till.rules({})).toMatchObject(RULES);
});

test.each([
  ['brackets that fall', { markup: [RULES.markup[1], RULES.markup[0]] }, 'rules.markup'],
  ['an open bracket missing at the end', { markup: [RULES.markup[0]] }, 'rules.markup'],
  [
    'a kind of work twice',
    {
      labourRates: [
        { name: 'Bench', rate: 1 },
        { name: 'bench', rate: 2 },
      ],
    },
    'rules.labourRates',
  ],
])('%s: refused at the field', async (_what, change, path) => {
  const { desk, by } = shop;
  const rules = { ...RULES, ...change } as typeof RULES;
  await expect(desk.till.setRules({ by, rules })).rejects.toMatchObject({
    code: 'BAD_INPUT',
    data: { issues: [{ path }] },
  });
});

test('a part follows its rule, and a change of it leaves the estimate as it was', async () => {
  const { desk, by } = shop;
  const facts = { by, number: 'RS-20', description: 'Ring set', price: 3_000, cost: 1_500 };
  const part = await desk.parts.add({ ...facts, priceRule: 'markup', coreCharge: 500 });
  expect(part).toMatchObject({ sellsAt: 2_100, sellsBy: 'cost-and-markup', coreCharge: 500 });
  const { jobId } = await desk.counter.takeIn(plainIntake(by));
  const line = {
    kind: 'part' as const,
    description: part.description,
    partId: part.id,
    quantity: 2_000,
    unitPrice: part.sellsAt,
    unitCost: part.cost,
    priceFrom: part.sellsBy,
    note: 'Oversize 0.25 mm',
  };
  await desk.till.writeEstimate({ by, jobId, lines: [line] });
  const repriced = { by, partId: part.id, price: 3_000, cost: 1_500, listPrice: 2_600 };
  expect(await desk.parts.reprice({ ...repriced, priceRule: 'list' })).toMatchObject({
    sellsAt: 2_600,
    sellsBy: 'list-price',
    coreCharge: 0,
  });
  const { estimates } = await desk.till.account({ jobId });
  expect(estimates[0]?.lines[0]).toMatchObject({
    unitPrice: 2_100,
    priceFrom: 'cost-and-markup',
    note: 'Oversize 0.25 mm',
    amount: 4_200,
  });
});

test('a customer’s place and certificate decide the tax; credit is the owner’s to give', async () => {
  const { desk, by } = shop;
  const facts = await desk.office.shop({});
  const tax = (name: string, place: string) => ({ name, ratePpm: 50_000, kinds: [], place });
  const parts = { kinds: ['part' as const] };
  await desk.office.setShop({
    by,
    ...facts,
    taxes: [
      { ...tax('State', ''), ...parts },
      { ...tax('Harbour county', 'Harbour county'), ...parts, from: '2026-03-01' },
      { ...tax('Old levy', ''), ...parts, until: '2026-02-28' },
    ],
  });
  const { jobId, customerId } = await desk.counter.takeIn({
    ...plainIntake(by),
    customer: { which: 'new', name: 'Harbour Grounds', phone: '(312) 555-0177' },
    machine: { ...plainIntake(by).machine, serial: 'FM-5 0099' },
  });
  const lines = [
    { kind: 'part' as const, description: 'Gasket', quantity: 1_000, unitPrice: 1_000 },
  ];
  const taxed = async () => {
    const { totals } = await desk.till.price({ jobId, lines });
    return { taxes: totals.taxes.map(({ name }) => name), exemptBy: totals.exemptBy };
  };
  expect(await taxed()).toEqual({ taxes: ['State'], exemptBy: '' });

  await desk.till.setCustomerTerms({ by: helper, customerId, taxPlace: 'Harbour county' });
  expect(await taxed()).toEqual({ taxes: ['State', 'Harbour county'], exemptBy: '' });

  const exempt = { customerId, exemptCertificate: 'EX-4471', exemptUntil: '2026-06-30' };
  await desk.till.setCustomerTerms({ by: helper, ...exempt });
  expect(await taxed()).toEqual({ taxes: [], exemptBy: 'EX-4471' });

  await expect(
    desk.till.setCustomerTerms({ by: helper, ...exempt, onAccount: true, termsDays: 30 }),
  ).rejects.toMatchObject({ code: 'OWNER_WANTED' });
  await desk.till.setCustomerTerms({ by, ...exempt, onAccount: true, termsDays: 30 });
  expect(await desk.till.customerTerms({ customerId })).toMatchObject({
    exemptCertificate: 'EX-4471',
    onAccount: true,
    termsDays: 30,
    creditLimit: null,
  });

  shop.setClock('2026-07-01T15:00:00.000Z');
  expect(await taxed()).toEqual({ taxes: ['State'], exemptBy: '' });
});

test('what an hour of somebody costs, the owner says', async () => {
  const { desk, by } = shop;
  const cost = { staffId: helper, hourlyCost: 3_150 };
  await expect(desk.till.setStaffCost({ by: helper, ...cost })).rejects.toMatchObject({
    code: 'OWNER_WANTED',
  });
  await desk.till.setStaffCost({ by, ...cost });
  expect(await desk.till.staffCosts({})).toContainEqual({ ...cost, name: 'Ivo Brandt' });
});

test('a bundle comes back at today’s prices, until it is retired', async () => {
  const { desk, by } = shop;
  const part = await desk.parts.add({ by, number: 'VG-7', description: 'Valve guide', price: 900 });
  const saved = await desk.till.saveBundle({
    by,
    name: 'Valve job, single cylinder',
    lines: [
      {
        kind: 'labour',
        description: 'Cut seats, lap valves',
        quantity: 2_500,
        unit: 'h',
        unitPrice: 9_000,
        priceFrom: 'labour-rate',
        workKind: 'Machining',
      },
      {
        kind: 'part',
        description: 'Valve guide',
        partId: part.id,
        quantity: 2_000,
        unitPrice: 900,
        priceFrom: 'shelf-price',
      },
      { kind: 'fee', description: 'Cleaning tank', quantity: 1_000, unitPrice: 1_200 },
    ],
  });
  await desk.parts.reprice({ by, partId: part.id, price: 950, cost: 400 });
  const [bundle] = await desk.till.bundles({});
  expect(bundle).toMatchObject({ id: saved.id, hours: 2_500 });
  expect(
    bundle?.lines.map(({ unitPrice, unitCost, priceFrom, partNumber }) => ({
      unitPrice,
      unitCost,
      priceFrom,
      partNumber,
    })),
  ).toEqual([
    { unitPrice: 11_000, unitCost: null, priceFrom: 'labour-rate', partNumber: '' },
    { unitPrice: 950, unitCost: 400, priceFrom: 'shelf-price', partNumber: 'VG-7' },
    { unitPrice: 1_200, unitCost: null, priceFrom: 'bundle', partNumber: '' },
  ]);
  const again = { by, name: saved.name };
  const other = { kind: 'fee' as const, description: 'Tank', quantity: 1_000, unitPrice: 1 };
  await expect(desk.till.saveBundle({ ...again, lines: [other] })).rejects.toMatchObject({
    code: 'BUNDLE_NAME_TAKEN',
  });
  expect(await desk.till.retireBundle({ by, id: saved.id })).toEqual([]);
  const revived = await desk.till.saveBundle({ ...again, lines: [other] });
  expect(revived).toMatchObject({ id: saved.id, hours: 0 });
});
