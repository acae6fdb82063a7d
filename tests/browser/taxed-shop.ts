import type { StaffId } from '../../shared/contract/ids.ts';
import type { Part } from '../../shared/contract/parts/index.ts';
import { type Desk, deskAt, ownerOf } from './desk-client.ts';
import { test as base } from './fixtures.ts';
import { type RunningServer, startServer } from './server.ts';
import { toldNow } from './told-time.ts';

/** A shop of its own that taxes parts twice and labour not at all, with something on its shelves. */
export interface TaxedShop {
  desk: Desk;
  by: StaffId;
  piston: Part;
  gaskets: Part;
}

export const test = base.extend<object, { server: RunningServer; taxed: TaxedShop }>({
  // Not the server that other files share: their bills know nothing of these taxes.
  server: [
    async ({ shop }, use) => {
      const server = await startServer(shop);
      await use(server);
      await server.stop();
    },
    { scope: 'worker', timeout: 600_000 },
  ],
  taxed: [
    async ({ server, session }, use) => {
      await use(await setUp(deskAt(server.origin, session)));
    },
    { scope: 'worker', auto: true },
  ],
});

async function setUp(desk: Desk): Promise<TaxedShop> {
  const by = (await ownerOf(desk)).id;
  await desk.office.setShop({
    ...(await desk.office.shop({})),
    by,
    labourRate: 8_500,
    rounding: 'half-up',
    taxBasis: 'invoice',
    taxes: [
      { name: 'State sales tax', ratePpm: 62_500, kinds: ['part', 'supplies'] },
      { name: 'County tax', ratePpm: 7_500, kinds: ['part'] },
    ],
  });
  const piston = await desk.parts.add({
    by,
    number: 'TL 4412-A',
    description: 'Piston +0.50 with rings',
    bin: 'B-04',
    price: 5_480,
    cost: 3_100,
    barcode: '4006381333931',
    supplier: 'Harrow & Pell',
    reorderPoint: 2_000,
  });
  const gaskets = await desk.parts.add({
    by,
    number: 'GK 51',
    description: 'Gasket set',
    bin: 'C-12',
    price: 3_440,
    cost: 1_900,
  });
  return { desk, by, piston, gaskets };
}

let taken = 0;

/** A job that was just taken in, with $150.00 to spend and $100.00 of deposit agreed. */
export async function takeInJob({ desk, by }: TaxedShop, customer = 'Łucja Żółkiewska') {
  taken += 1;
  return desk.counter.takeIn({
    by,
    customer: { which: 'new', name: customer, phone: '(312) 555-0142' },
    machine: {
      which: 'new',
      kind: 'tiller',
      make: 'Ruddock',
      model: 'RT 5',
      serial: `RT5-${toldNow().getTime()}-${taken}`,
      engine: { make: 'Halvard', model: 'H 210' },
    },
    complaint: 'Smokes and has no power.',
    spendingLimit: 15_000,
    deposit: 10_000,
    signature: { name: customer },
  });
}
