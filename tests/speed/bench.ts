import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { createRouterClient } from '@orpc/server';
import Database from 'better-sqlite3';
import PDFDocument from 'pdfkit';
import { newId } from '../../db/new-id.ts';
import { searchTextOf } from '../../db/queries/search-text.ts';
import { customer } from '../../db/schema/index.ts';
import { openStore } from '../../db/store.ts';
import { desk, deskInterceptors, undisturbed } from '../../electron/desk/index.ts';
import { drawPaper } from '../../electron/paper/index.ts';
import { PRICE_FILE_LINES, priceFileTimes } from './price-file.ts';

/**
 * `npm run bench`: what the program costs over the bare libraries doing the same, as ratios taken in one
 * run. Times differ from machine to machine and are printed for orientation only.
 */

const ROUNDS = 15;

async function median(work: () => unknown): Promise<number> {
  await work();
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const start = performance.now();
    await work();
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b)[Math.floor(ROUNDS / 2)] ?? Number.NaN;
}

const folder = mkdtempSync(join(tmpdir(), 'tappet-bench-'));
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
const { id: by } = await client.office.openShop({
  ownerName: 'Ruth Okafor',
  shopName: 'Millbrook Small Engines',
  currency: 'USD',
  locale: 'en-US',
  timeZone: 'America/Chicago',
  country: 'US',
  paperSize: 'Letter',
});

/** A file of its own with the same settings as the store, for the bare side of each comparison. */
const bare = new Database(join(folder, 'bare.db'));
bare.pragma('journal_mode = WAL');
bare.pragma('synchronous = FULL');
bare.exec('CREATE TABLE customer (id TEXT PRIMARY KEY, name TEXT, search_text TEXT) STRICT');
const insertBare = bare.prepare('INSERT INTO customer VALUES (?, ?, ?)');

const GIVEN = ['Greta', 'Łucja', 'Omar', 'Sigrid', 'Ελένη', '太郎', 'Nuno', 'Ifeoma'];
const FAMILY = ['Lindqvist', 'Żółkiewska', 'Haddad', 'Ødegård', 'Παππά', '山田', 'Alves', 'Eze'];
const MANY = 20_000;
const nameOf = (index: number): string =>
  `${GIVEN[index % GIVEN.length]} ${FAMILY[Math.floor(index / 7) % FAMILY.length]} ${index}`;
store.write((writing) => {
  for (let index = 0; index < MANY; index += 1) {
    const name = nameOf(index);
    const row = {
      id: newId(new Date()),
      number: index + 1,
      name,
      phone: '',
      phoneInternational: '',
      email: '',
      address: '',
      reachBy: 'telephone' as const,
      note: '',
      since: new Date().toISOString(),
      searchText: searchTextOf(name),
    };
    writing.insert(customer).values(row).run();
    insertBare.run(row.id, row.name, row.searchText);
  }
  writing.run(`INSERT INTO counter_number (kind, next) VALUES ('customer', ${MANY + 1})`);
});
const scanBare = bare.prepare('SELECT * FROM customer WHERE search_text LIKE ? LIMIT 50');

const intake = () =>
  client.counter.takeIn({
    by,
    customer: { which: 'new', name: 'Greta Lindqvist' },
    machine: { which: 'new', kind: 'pump', engine: {} },
    complaint: 'Will not start',
    signature: { name: 'Greta Lindqvist' },
  });
const onePage = () => {
  const page = new PDFDocument();
  page.text('Will not start');
  page.end();
  return page.read();
};
let serial = 0;

const rows: { what: string; ours: number; against: string; bare: number }[] = [
  {
    what: 'add a customer, journal and all',
    ours: await median(() => client.counter.addCustomer({ by, name: 'Greta Lindqvist' })),
    against: 'one bare row in a transaction',
    bare: await median(() => {
      serial += 1;
      insertBare.run(`bench-${serial}`, 'Greta Lindqvist', 'greta lindqvist');
    }),
  },
  {
    what: `find among ${MANY} customers without accents`,
    ours: await median(() => client.counter.findCustomers({ text: 'zolkiewska 199' })),
    against: 'one bare LIKE over as many rows',
    bare: await median(() => scanBare.all('%zolkiewska%199%')),
  },
  {
    what: 'take a machine in, two papers and a signature',
    ours: await median(intake),
    against: 'two empty pages of the PDF library',
    bare: await median(() => [onePage(), onePage()]),
  },
  {
    what: 'the day, with its lists',
    ours: await median(() => client.counter.day({})),
    against: 'find among the customers, bare',
    bare: await median(() => scanBare.all('%zolkiewska%199%')),
  },
  {
    what: `read and apply a price file of ${PRICE_FILE_LINES} lines`,
    against: 'parse it and insert bare rows',
    ...(await priceFileTimes(client, by, bare)),
  },
];

const columns = (cells: string[]) =>
  console.log(
    cells
      .map((cell, index) => cell.padEnd([46, 36, 10, 10, 8][index] ?? 0))
      .join('  ')
      .trimEnd(),
  );
columns(['what', 'against', 'ours ms', 'bare ms', 'ratio']);
for (const { what, against, ours, bare: theirs } of rows)
  columns([what, against, ours.toFixed(2), theirs.toFixed(2), (ours / theirs).toFixed(1)]);

bare.close();
store.close();
rmSync(folder, { recursive: true, force: true });
