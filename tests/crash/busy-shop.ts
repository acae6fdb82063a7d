import { setImmediate as breath } from 'node:timers/promises';
import { createRouterClient } from '@orpc/server';
import { openStore } from '../../db/store.ts';
import { desk, deskInterceptors, undisturbed } from '../../electron/desk/index.ts';
import { drawPaper } from '../../electron/paper/index.ts';

/**
 * Run as a program of its own, and killed by the test while it works: takes machines in, estimates, bills, takes
 * money and credits, without end. It says a line on stdout for each invoice that it was told is issued.
 */
const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error('Say which data folder.');
const store = openStore(folder);
const client = createRouterClient(desk, {
  context: {
    store,
    now: () => new Date(),
    drawPaper,
    program: { version: '0.0.0' },
    alone: undisturbed,
  },
  interceptors: deskInterceptors,
});
const people = await client.office.staff({});
const owner =
  people[0] ??
  (await client.office.openShop({
    ownerName: 'Ruth Okafor',
    shopName: 'Millbrook Small Engines',
    currency: 'USD',
    locale: 'en-US',
    timeZone: 'America/Chicago',
    country: 'US',
    paperSize: 'Letter',
  }));
const by = owner.id;
for (;;) {
  const { jobId } = await client.counter.takeIn({
    by,
    customer: { which: 'new', name: 'Greta Lindqvist' },
    machine: { which: 'new', kind: 'pump', engine: {} },
    complaint: 'Will not start',
    spendingLimit: 100_000,
    signature: { name: 'Greta Lindqvist' },
  });
  await client.till.takePayment({ by, jobId, kind: 'deposit', method: 'cash', amount: 500 });
  await client.till.writeEstimate({
    by,
    jobId,
    lines: [{ kind: 'labour', description: 'Carburettor', quantity: 1_000, unitPrice: 8_000 }],
  });
  const { invoice } = await client.till.issueInvoice({ by, jobId });
  process.stdout.write(`${invoice?.number}\n`);
  if (invoice === null) throw new Error('The invoice that was issued is not there.');
  await client.till.takePayment({ by, jobId, kind: 'payment', method: 'card', amount: 7_500 });
  await client.till.creditInvoice({
    by,
    invoiceId: invoice.id,
    lines: [{ line: 0, amount: 1_000 }],
    reason: 'Took longer than promised',
  });
  // Calls in process never wait for the outside world: without this nothing said is ever sent, and a
  // closed pipe is never noticed.
  await breath();
}
