import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { verifyJournal } from '../../db/journal.ts';
import { knownMigrations } from '../../db/migrations.ts';
import { openStore } from '../../db/store.ts';
import { backUpDaily } from '../../electron/desk/index.ts';
import { BACK_UP_REFUSALS } from '../../shared/contract/back-ups.ts';
import { BACK_UP_TROUBLES, DAILY_KEPT } from '../../shared/work/office/back-ups.ts';
import { filesIn, openUnsetShop, sendFile, type UnsetShop } from './back-up-shop.ts';
import { openTestShop, plainIntake, type TestShop } from './shop.ts';

const NOBODY = '01a21222-041d-73c9-9c5b-88b4d7a023dc' as TestShop['by'];

/** For a machine that has other work besides. */
const PATIENT = { timeout: 15_000 };

let shop: TestShop;
const withShopEachTime = () => {
  beforeEach(async () => {
    shop = await openTestShop();
  });
  afterEach(() => shop.close());
};

const list = async () => (await shop.desk.office.backUps({})).files;
const fileOf = (fileName: string) => join(shop.folder, 'backups', fileName);

async function madeBackUp(): Promise<string> {
  const { backUp } = await shop.desk.office.backUp({ by: shop.by });
  if (backUp === null) throw new Error('No back-up was made.');
  return backUp.fileName;
}

async function checked(fileName: string) {
  const { found } = await shop.desk.office.checkBackUp({ from: { fileName } });
  if (found === null) throw new Error('Nothing was found.');
  return found;
}

const orderFor = (found: Awaited<ReturnType<typeof checked>>) => ({
  by: shop.by,
  from: { fileName: found.fileName },
  sha256: found.sha256,
  storeEntries: found.lost.storeEntries,
  reason: 'The new disk',
});

describe('a back-up', () => {
  withShopEachTime();

  test('is listed with what it is, newest first, and read out piece by piece as it is', async () => {
    expect(await list()).toEqual([]);
    const first = await madeBackUp();
    const second = await madeBackUp();
    writeFileSync(fileOf('from a stick.db'), 'whatever');
    writeFileSync(fileOf('notes.txt'), 'no back-up');
    const files = await list();
    expect(files.map(({ fileName }) => fileName)).toEqual(
      expect.arrayContaining([second, first, 'from a stick.db']),
    );
    expect(files).toHaveLength(3);
    const ours = files.filter(({ origin }) => origin === 'by-hand');
    expect(ours.map(({ fileName }) => fileName)).toEqual([second, first]);
    expect(ours[0]).toMatchObject({ verified: true });
    expect(files.find(({ fileName }) => fileName === 'from a stick.db')).toMatchObject({
      origin: 'put-there',
      verified: false,
    });
    const { bytes, size } = await shop.desk.office.readBackUpPiece({ fileName: first, at: 0 });
    expect(Buffer.from(bytes, 'base64').equals(readFileSync(fileOf(first)))).toBe(true);
    expect(size).toBe(readFileSync(fileOf(first)).length);
    for (const fileName of ['../tappet.db', '/etc/passwd', 'none.db'])
      await expect(shop.desk.office.readBackUpPiece({ fileName, at: 0 })).rejects.toMatchObject({
        code: 'NOT_FOUND',
      });
  });

  test('is made by itself once a day, and so many of these are kept; others stay', async () => {
    const byHand = await madeBackUp();
    for (let day = 10; day < 10 + DAILY_KEPT; day += 1)
      copyFileSync(fileOf(byHand), fileOf(`tappet-2026-04-${day}T15-00-00-000Z-daily.db`));
    for (const day of [26, 26, 27]) {
      shop.setClock(`2026-04-${day}T15:00:00.000Z`);
      await backUpDaily(shop.context);
    }
    const files = await list();
    const daily = files.filter(({ origin }) => origin === 'daily').map(({ at }) => at.slice(0, 10));
    expect(daily).toHaveLength(DAILY_KEPT);
    expect(daily.slice(0, 3)).toEqual(['2026-04-27', '2026-04-26', '2026-04-23']);
    expect(files.at(-1)?.fileName).toBe(byHand);
  });

  test('can be stopped, and leaves nothing', async () => {
    const { id, state } = await shop.desk.office.backUp({ by: shop.by, wait: false });
    expect(state).toBe('running');
    await expect(shop.desk.office.backUp({ by: shop.by })).rejects.toMatchObject({
      code: 'WORK_UNDER_WAY',
    });
    await shop.desk.office.stopLongWork({ id });
    await expect
      .poll(async () => (await shop.desk.office.longWork({ id })).state, PATIENT)
      .toBe('stopped');
    expect(filesIn(join(shop.folder, 'backups'))).toEqual([]);
  });
});

describe('brought back from the list', () => {
  withShopEachTime();

  test('the shop is as it was, and its journal says so; what it was before is kept', async () => {
    const { desk, by, context } = shop;
    await desk.counter.takeIn(plainIntake(by));
    const fileName = await madeBackUp();
    const { jobId } = await desk.counter.takeIn({
      ...plainIntake(by),
      customer: { which: 'new', name: 'Anders Holm' },
      machine: { which: 'new', kind: 'pump', serial: 'P 2', engine: {} },
    });
    const lines = [
      { kind: 'labour' as const, description: 'Work', quantity: 1_000, unitPrice: 500 },
    ];
    await desk.till.issueInvoice({ by, jobId, lines });
    await desk.till.takePayment({ by, jobId, kind: 'payment', method: 'cash', amount: 500 });

    const found = await checked(fileName);
    expect(found).toMatchObject({
      shop: 'Millbrook Small Engines',
      older: false,
      lastEntry: { by: 'Ruth Okafor', what: 'office.backUp' },
      owners: [{ id: by, name: 'Ruth Okafor' }],
      customers: 1,
      jobs: 1,
      invoices: 0,
      lost: {
        sameShop: true,
        entries: 3,
        customers: 1,
        jobs: ['J000002'],
        invoices: ['I-000001'],
        payments: 1,
        readings: 0,
      },
    });
    expect(found.sha256).toBe(
      createHash('sha256')
        .update(readFileSync(fileOf(fileName)))
        .digest('hex'),
    );

    const work = await desk.office.bringBack(orderFor(found));
    expect(work).toMatchObject({ state: 'done', trouble: null });
    expect((await desk.counter.findCustomers({ text: '' })).map(({ name }) => name)).toEqual([
      'Greta Lindqvist',
    ]);
    const [entry] = await desk.office.journal({ limit: 1 });
    expect(entry).toMatchObject({
      seq: found.entries + 1,
      what: 'office.bringBack',
      by: 'Ruth Okafor',
    });
    expect(JSON.parse(entry?.detail ?? '')).toEqual({
      file: fileName,
      sha256: found.sha256,
      owner: 'Ruth Okafor',
      reason: 'The new disk',
      kept: work.backUp?.fileName,
    });
    expect(verifyJournal(context.store.read)).toMatchObject({ intact: true });
    expect(await desk.office.about({})).toMatchObject({ broughtBack: 1 });
    expect(existsSync(join(shop.folder, 'bringing-back', 'file'))).toBe(false);
    expect(filesIn(join(shop.folder, 'bringing-back'))).toEqual([]);
    // It can be written again, and what was there can be had again.
    await desk.counter.addCustomer({ by, name: 'Ida Brandt' });
    const [kept] = (await list()).filter(({ origin }) => origin === 'before-bringing-back');
    const back = await checked(kept?.fileName ?? '');
    expect(back).toMatchObject({ customers: 2, jobs: 2, invoices: 1 });
    expect(back.lost).toMatchObject({ sameShop: true, entries: 2, customers: 1, jobs: [] });
    await desk.office.bringBack(orderFor(back));
    expect(await desk.counter.findCustomers({ text: '' })).toHaveLength(2);
    expect((await desk.till.account({ jobId })).invoices).toHaveLength(1);
  });

  test('only by an owner, only what was checked, and only against the store that was looked at', async () => {
    const { desk, by } = shop;
    const fileName = await madeBackUp();
    const bench = await desk.office.addStaff({ by, name: 'Wren', role: 'bench' });
    const order = orderFor(await checked(fileName));
    const before = shop.contents();
    await expect(desk.office.bringBack({ ...order, by: bench.id })).rejects.toMatchObject({
      code: 'OWNER_WANTED',
    });
    await expect(desk.office.bringBack({ ...order, by: NOBODY })).rejects.toMatchObject({
      code: 'STAFF_UNKNOWN',
    });
    await expect(desk.office.bringBack({ ...order, storeEntries: 0 })).rejects.toMatchObject({
      code: 'STORE_MOVED_ON',
    });
    await expect(
      desk.office.bringBack({ ...order, from: { fileName: 'none.db' } }),
    ).rejects.toMatchObject({ code: 'NOT_FOUND' });
    expect(shop.contents()).toBe(before);
    await expect(desk.office.bringBack({ ...order, sha256: 'a'.repeat(64) })).rejects.toMatchObject(
      { code: 'FILE_CHANGED' },
    );
    expect(await desk.office.about({})).toMatchObject({ broughtBack: 0 });
    await desk.office.addStaff({ by, name: 'Odile', role: 'counter' });
  });

  test('nobody writes meanwhile, everything can be read, and it can be stopped', async () => {
    const { desk, by } = shop;
    const order = orderFor(await checked(await madeBackUp()));
    const { id } = await desk.office.bringBack({ ...order, wait: false });
    await expect(desk.counter.addCustomer({ by, name: 'Ida' })).rejects.toMatchObject({
      code: 'STORE_BUSY',
      defined: true,
      message: expect.stringContaining('brought back'),
    });
    expect((await desk.office.backUps({})).underWay).toMatchObject({ id, kind: 'bring-back' });
    await desk.office.stopLongWork({ id });
    await expect
      .poll(async () => (await desk.office.longWork({ id })).state, PATIENT)
      .toBe('stopped');
    await desk.counter.addCustomer({ by, name: 'Ida' });
    expect(await desk.office.about({})).toMatchObject({ broughtBack: 0 });
  });

  test('one of an older version is brought up to this one, and kept as it was, too', async () => {
    const older = await openUnsetShop(knownMigrations().slice(0, 1));
    older.direct((db) => {
      db.exec(
        "INSERT INTO staff (id, name, role, active) VALUES ('01a21222-041d-73c9-9c5b-88b4d7a023dc', 'Ada', 'owner', 1)",
      );
    });
    await list();
    writeFileSync(fileOf('old.db'), older.bytes());
    older.close();
    const found = await checked('old.db');
    expect(found).toMatchObject({ older: true, lost: { sameShop: false } });
    await shop.desk.office.bringBack(orderFor(found));
    expect((await shop.desk.office.staff({})).map(({ name }) => name)).toEqual(['Ada']);
    // Who did it is not on that list, and the entry is there all the same.
    expect(await shop.desk.office.journal({ limit: 5 })).toMatchObject([
      { what: 'office.bringBack', by: '', detail: expect.stringContaining('Ruth Okafor') },
    ]);
    expect((await list()).map(({ origin }) => origin)).toEqual(
      expect.arrayContaining(['before-update', 'before-bringing-back', 'put-there']),
    );
  });
});

describe('on a new machine', () => {
  withShopEachTime();

  let unset: UnsetShop;
  beforeEach(async () => {
    unset = await openUnsetShop();
  });
  afterEach(() => unset.close());

  test('a shop is brought back from a file that was sent, by an owner of that shop', async () => {
    await shop.desk.counter.takeIn(plainIntake(shop.by));
    const fileName = await madeBackUp();
    const upload = await sendFile(unset.desk, readFileSync(fileOf(fileName)), 50_000);
    const { found } = await unset.desk.office.checkBackUp({ from: { fileName, upload } });
    expect(found).toMatchObject({ jobs: 1, lost: { storeEntries: 0, entries: 0, jobs: [] } });
    const order = {
      by: shop.by,
      from: { fileName, upload },
      sha256: found?.sha256 ?? '',
      storeEntries: 0,
      reason: 'The laptop died',
    };
    await expect(unset.desk.office.bringBack({ ...order, by: NOBODY })).rejects.toMatchObject({
      code: 'STAFF_UNKNOWN',
    });
    expect(await unset.desk.office.about({})).toMatchObject({ firstRun: true });
    await unset.desk.office.bringBack(order);
    expect(await unset.desk.office.about({})).toMatchObject({ firstRun: false, broughtBack: 1 });
    expect(await unset.desk.office.staff({})).toEqual(await shop.desk.office.staff({}));
    expect(await unset.desk.office.journal({ limit: 1 })).toMatchObject([
      { what: 'office.bringBack', by: 'Ruth Okafor' },
    ]);
    // Nothing was there that could have been kept, and what was sent is gone.
    expect(await unset.desk.office.backUps({})).toMatchObject({ files: [] });
    expect(filesIn(join(unset.folder, 'bringing-back'))).toEqual([]);
  });

  test('pieces that don’t follow are refused, and a second file takes the first one’s place', async () => {
    const bytes = readFileSync(fileOf(await madeBackUp()));
    const piece = bytes.subarray(0, 4096).toString('base64');
    const { office } = unset.desk;
    await expect(office.sendBackUpPiece({ at: 4096, bytes: piece })).rejects.toMatchObject({
      code: 'NOT_OURS',
    });
    const first = await office.sendBackUpPiece({ at: 0, bytes: piece });
    await expect(
      office.sendBackUpPiece({ ...first, at: 8192, bytes: piece }),
    ).rejects.toMatchObject({ code: 'PIECE_MISSING' });
    await office.sendBackUpPiece({ at: 0, bytes: piece });
    await expect(
      office.sendBackUpPiece({ ...first, at: 4096, bytes: piece }),
    ).rejects.toMatchObject({ code: 'PIECE_MISSING' });
    expect(filesIn(join(unset.folder, 'bringing-back'))).toHaveLength(1);
  });
});

describe('a file that is not brought back leaves everything as it was', () => {
  let before: string;
  let sound: Buffer;
  beforeAll(async () => {
    shop = await openTestShop();
    sound = readFileSync(fileOf(await madeBackUp()));
    before = shop.contents();
  });
  afterAll(() => {
    expect(shop.contents()).toBe(before);
    shop.close();
  });

  const altered = async (work: (db: Database.Database) => void): Promise<Buffer> => {
    const path = fileOf('altered.db');
    writeFileSync(path, sound);
    const db = new Database(path);
    work(db);
    db.close();
    return readFileSync(path);
  };
  const withoutGuard = (what: string) => (db: Database.Database) =>
    db.exec(`DROP TRIGGER journal_no_update; ${what};
      CREATE TRIGGER journal_no_update BEFORE UPDATE ON journal BEGIN SELECT RAISE(ABORT, 'append-only: journal'); END`);
  const emptyStore = (migrations = knownMigrations()): Promise<Buffer> =>
    openUnsetShop(migrations).then((unset) => {
      const bytes = unset.bytes();
      unset.close();
      return bytes;
    });
  const files: [
    code: (typeof BACK_UP_TROUBLES)[number],
    what: string,
    make: () => Promise<Buffer>,
  ][] = [
    ['NOT_OURS', 'a text', async () => Buffer.from('Dear diary,\n'.repeat(50))],
    ['NOT_OURS', 'an empty file', async () => Buffer.alloc(0)],
    ['NOT_OURS', 'another program’s', () => altered((db) => db.pragma('application_id = 7'))],
    [
      'NEWER_PROGRAM',
      'a newer program’s',
      () =>
        altered((db) =>
          db.exec(
            "INSERT INTO migration (tag, sha256, applied_at) VALUES ('9999_future', 'f', 'then')",
          ),
        ),
    ],
    [
      'MIGRATIONS_DIFFER',
      'one with a trigger of somebody’s',
      () =>
        altered((db) =>
          db.exec('CREATE TRIGGER sly AFTER INSERT ON journal BEGIN DELETE FROM staff; END'),
        ),
    ],
    [
      'MIGRATIONS_DIFFER',
      'one with a guard taken off',
      () => altered((db) => db.exec('DROP TRIGGER journal_no_update')),
    ],
    ['DAMAGED', 'half a file', async () => sound.subarray(0, Math.floor(sound.length / 2))],
    [
      'DAMAGED',
      'one with a spoiled page',
      async () => {
        const bytes = Buffer.from(sound);
        bytes.fill(0x5a, 4096 * 3, 4096 * 5);
        return bytes;
      },
    ],
    [
      'DAMAGED',
      'one with a row that points nowhere',
      () =>
        altered((db) => {
          db.pragma('foreign_keys = OFF');
          db.exec(
            "INSERT INTO machine (id, customer_id, kind, make, model, serial, search_text) VALUES ('m', 'nobody', 'pump', '', '', '', '')",
          );
        }),
    ],
    [
      'JOURNAL_BROKEN',
      'one whose journal was changed',
      () => altered(withoutGuard("UPDATE journal SET detail = '{}' WHERE seq = 1")),
    ],
    ['NO_SHOP', 'one without a shop', () => emptyStore()],
  ];

  test.each(files)('%s: %s', async (code, _what, make) => {
    const bytes = await make();
    const path = fileOf('chosen.db');
    writeFileSync(path, bytes);
    const { status, message } = BACK_UP_REFUSALS[code];
    await expect(
      shop.desk.office.checkBackUp({ from: { fileName: 'chosen.db' } }),
    ).rejects.toMatchObject({ code, status, message, defined: true });
    expect(readFileSync(path).equals(bytes)).toBe(true);
    expect(filesIn(join(shop.folder, 'bringing-back'))).toEqual([]);
    // Two sentences or more: what happened, and what to do next.
    expect(message).toMatch(/^[A-Z].+[.:] .+\.$/);
  });

  test('who comes back to look is told the same', async () => {
    writeFileSync(fileOf('chosen.db'), sound.subarray(0, 4096));
    const from = { fileName: 'chosen.db' };
    const { id } = await shop.desk.office.checkBackUp({ from, wait: false });
    const { message } = BACK_UP_REFUSALS.DAMAGED;
    await expect
      .poll(() => shop.desk.office.longWork({ id }), PATIENT)
      .toMatchObject({ state: 'failed', trouble: { code: 'DAMAGED', message } });
  });

  test('each trouble has its sentence', () => {
    expect(Object.keys(BACK_UP_REFUSALS).sort()).toEqual([...BACK_UP_TROUBLES].sort());
  });
});

describe('a crash', () => {
  withShopEachTime();

  test('leaves nothing on the stage once the store is opened again', async () => {
    const unset = await openUnsetShop();
    const bytes = readFileSync(fileOf(await madeBackUp()));
    await sendFile(unset.desk, bytes, bytes.length);
    unset.store.close();
    openStore(unset.folder).close();
    expect(existsSync(join(unset.folder, 'bringing-back'))).toBe(false);
    unset.close();
  });
});
