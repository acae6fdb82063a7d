import { type ChildProcess, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { asc, eq } from 'drizzle-orm';
import { afterAll, expect, test } from 'vitest';
import { verifyJournal } from '../../db/journal.ts';
import { papersOf } from '../../db/queries/office.ts';
import { invoiceNumber } from '../../db/queries/till/invoices.ts';
import {
  application,
  creditNote,
  invoice,
  issuedPaper,
  job,
  payment,
  receipt,
} from '../../db/schema/index.ts';
import { openStore } from '../../db/store.ts';

const folder = mkdtempSync(join(tmpdir(), 'tappet-crash-'));
let running: ChildProcess | undefined;
afterAll(() => {
  running?.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

const BUSY_SHOP = fileURLToPath(new URL('./busy-shop.ts', import.meta.url));

/** Lets the shop work until it has issued some invoices, then kills it a moment later, in mid-call. */
async function workAndDie(invoices: number, moment: number): Promise<string[]> {
  const shop: ChildProcess = spawn(process.execPath, [BUSY_SHOP, folder], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  running = shop;
  const said: string[] = [];
  const ended = once(shop, 'exit');
  if (shop.stdout === null) throw new Error('The shop says nothing.');
  for await (const line of createInterface({ input: shop.stdout })) {
    said.push(line);
    if (said.length === invoices) setTimeout(() => shop.kill('SIGKILL'), moment);
  }
  await ended;
  return said;
}

test.each([
  [2, 3],
  [1, 41],
  [2, 97],
])(
  'killed in mid-work (after %i invoices and %i ms), the books still close',
  async (...when) => {
    const said = await workAndDie(...when);
    const store = openStore(folder);
    const { read } = store;
    const bills = read.select().from(invoice).orderBy(asc(invoice.number)).all();
    // What was told is kept, and the numbers run on without a gap.
    expect(bills.map(({ number }) => invoiceNumber(number))).toEqual(expect.arrayContaining(said));
    expect(bills.map(({ number }) => number)).toEqual(bills.map((_, index) => index + 1));
    const upTo = (rows: unknown[]) => rows.map((_, index) => index + 1);
    const credits = read.select().from(creditNote).orderBy(asc(creditNote.number)).all();
    expect(credits.map(({ number }) => number)).toEqual(upTo(credits));
    const receipts = read.select().from(receipt).orderBy(asc(receipt.number)).all();
    expect(receipts.map(({ number }) => number)).toEqual(upTo(receipts));
    // Each receipt has its payment, and what was set against bills is what they were paid.
    const payments = read.select().from(payment).all();
    expect(payments.map(({ receiptId }) => receiptId).sort()).toEqual(
      receipts.map(({ id }) => id).sort(),
    );
    for (const { id, jobId, total } of bills) {
      const of = <Row extends { amount: number }>(rows: Row[]) =>
        rows.reduce((sum, { amount }) => sum + amount, 0);
      const paid = of(payments.filter((each) => each.jobId === jobId));
      const credited = credits.find(({ invoiceId }) => invoiceId === id)?.total ?? 0;
      const applied = of(
        read.select().from(application).where(eq(application.invoiceId, id)).all(),
      );
      expect(applied).toBe(Math.min(paid, total - credited));
    }
    // No job is there by halves: each has its ticket and its tag.
    const jobs = read.select().from(job).orderBy(asc(job.number)).all();
    expect(jobs.map(({ number }) => number)).toEqual(jobs.map((_, index) => index + 1));
    for (const { id } of jobs)
      expect(papersOf(read, id).map(({ kind }) => kind)).toEqual(
        expect.arrayContaining(['claim-ticket', 'tag']),
      );
    for (const { content, fingerprint, pdf, pdfSha256 } of read.select().from(issuedPaper).all()) {
      expect(createHash('sha256').update(content).digest('hex')).toBe(fingerprint);
      expect(createHash('sha256').update(pdf).digest('hex')).toBe(pdfSha256);
    }
    expect(verifyJournal(read)).toMatchObject({ intact: true });
    store.close();
  },
  30_000,
);
