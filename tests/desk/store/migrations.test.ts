import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, afterEach, beforeEach, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { APPLICATION_ID } from '../../../db/identity.ts';
import { knownMigrations, type Migration } from '../../../db/migrations.ts';
import { openStore, type StoreRefusal } from '../../../db/store.ts';

const known = knownMigrations();

/** Migrations that a test below has taken from the version before, with rows in the tables. */
const tested = new Set<string>();

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-store-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const file = () => join(folder, 'tappet.db');

/** A store with the first `count` migrations. */
const storeAt = (count: number) => openStore(folder, { migrations: known.slice(0, count) }).close();

const direct = <T>(work: (db: Database.Database) => T): T => {
  const db = new Database(file());
  try {
    return work(db);
  } finally {
    db.close();
  }
};

const refusalOf = (open: () => unknown): StoreRefusal => {
  try {
    open();
  } catch (error) {
    return error as StoreRefusal;
  }
  throw new Error('It was opened.');
};

/** The migration at `index`, from the version before it, over the rows that `fill` puts in. */
function migrate(index: number, fill: (db: Database.Database) => void) {
  const migration = known[index];
  if (migration === undefined) throw new Error(`There is no migration ${index}.`);
  tested.add(migration.tag);
  if (index > 0) {
    storeAt(index);
    direct(fill);
  }
  storeAt(index + 1);
}

const ADA = "INSERT INTO staff (id, name, role, active) VALUES ('s1', 'Ada', 'owner', 1)";
const ENTRY =
  "INSERT INTO journal (seq, at, by, what, detail, previous, hash) VALUES (1, 'now', 's1', 'office.openShop', '{}', '0', 'h')";

const WITH_A_READING = `
  INSERT INTO customer (id, number, name, phone, phone_international, email, address, reach_by, note, since, search_text)
    VALUES ('c', 1, 'Greta', '', '', '', '', 'telephone', '', 'now', 'greta');
  INSERT INTO machine (id, customer_id, kind, make, model, serial, search_text) VALUES ('m', 'c', 'tiller', '', '', '', '');
  INSERT INTO engine_model (id, make, model, cycle, cylinders, note, model_key, search_text)
    VALUES ('em', 'Corvane', 'CV 170', 'four-stroke', 1, '', 'k', '');
  INSERT INTO engine (id, machine_id, make, model, type_code, serial, date_code, engine_model_id)
    VALUES ('e', 'm', '', '', '', '', '', 'em');
  INSERT INTO job (id, number, customer_id, machine_id, engine_id, state, state_since, state_note, complaint, symptoms,
    condition, left_with, fuel, last_service, reach_by, taken_in_at, taken_in_on, taken_in_by, intake_signature, work_done, search_text)
    VALUES ('j', 1, 'c', 'm', 'e', 'taken-in', 'now', '', 'Smokes', '[]', '', '[]', '', '', 'telephone', 'now', '2026-03-02', 's1', '{}', '', '');
  INSERT INTO reading (id, job_id, engine_id, feature, place, place_label, phase, text, unit, value, value_base,
    gauge_remark, uncertainty_base, verdict, by, at)
    VALUES ('r', 'j', 'e', 'coil-air-gap', 'c1-leg-1', 'leg 1', 'final', '0.3', 'mm', 0.3, 0.3, '', 0, 'within', 's1', 'now');
  INSERT INTO hold_point_event (id, job_id, key, outcome, reason, by, at) VALUES ('h', 'j', 'oil', 'passed', '', 's1', 'now');`;
const A_BILL_PAID = `
  INSERT INTO issued_paper (id, kind, number, job_id, title, file_name, content, fingerprint, pdf, pdf_sha256, issued_at, issued_by)
    VALUES ('p', 'invoice', 'I-000001', 'j', '', '', '{}', '', x'00', '', 'now', 's1');
  INSERT INTO part (id, number, number_key, description, bin, unit, price, cost, barcode, supplier, reorder_point, search_text)
    VALUES ('pt', 'VK-1', 'vk1', 'Ring', '', 'pc', 900, 400, '', '', 0, '');
  INSERT INTO estimate (id, number, job_id, revision, lines, totals, total, note, paper_id, by, at)
    VALUES ('e1', 'E-000001-1', 'j', 1, '[]', '{}', 5000, '', 'p', 's1', 'now');
  INSERT INTO approval (id, job_id, estimate_id, how, approved_by, amount, by, at)
    VALUES ('a1', 'j', 'e1', 'telephone', 'Greta', 5000, 's1', 'now');
  INSERT INTO invoice (id, number, job_id, lines, totals, total, currency, note, paper_id, by, at)
    VALUES ('i', 1, 'j', '[]', '{}', 5000, 'USD', '', 'p', 's1', 'now');
  INSERT INTO payment (id, job_id, kind, method, amount, currency, by, at) VALUES
    ('p1', 'j', 'deposit', 'cash', 2000, 'USD', 's1', 'now'),
    ('p2', 'j', 'payment', 'card', 4000, 'USD', 's1', 'now'),
    ('p3', 'j', 'refund', 'cash', 500, 'USD', 's1', 'now');`;
const A_SHELF = `
  INSERT INTO part (id, number, number_key, description, bin, unit, price, cost, barcode, supplier, reorder_point, search_text) VALUES
    ('p1', 'VK-1', 'vk1', 'Ring', '', 'pc', 900, 405, '', 'Ring House', 0, ''),
    ('p2', 'VK-2', 'vk2', 'Pin', '', 'pc', 900, 400, '', 'ring house ', 0, '');
  INSERT INTO stock_movement (id, part_id, kind, quantity, reason, by, at) VALUES
    ('m1', 'p1', 'received', 3500, '', 's1', 'now'),
    ('m2', 'p1', 'issued', -1000, '', 's1', 'now');`;
const A_GAUGE_CHECKED = `
  INSERT INTO gauge (id, name, kind, unit, range_low, range_high, resolution, max_error, certificate)
    VALUES ('g', 'Leaves', 'feeler-gauge', 'mm', 0.05, 1, 0.01, 0.005, '');
  INSERT INTO gauge_check (id, gauge_id, checked_on, good, certificate, note, by, at)
    VALUES ('k', 'g', '2026-03-02', 1, '', '', 's1', 'now');`;
const A_BOLT_PULLED = `
  INSERT INTO gauge (id, name, kind, unit, range_low, range_high, resolution, max_error, certificate)
    VALUES ('w', 'Wrench', 'torque-wrench', 'N·m', 5, 60, 0.1, 0.25, '');
  INSERT INTO torque_pull (id, job_id, feature, round, stage, bolt, gauge_id, setting, setting_unit, extension, angle, by, at)
    VALUES ('p', 'j', 'head-bolt-torque', 1, 1, 3, 'w', 9.2, 'N·m', 60, 0, 's1', 'now');`;
const A_STATEMENT = `
  INSERT INTO issued_paper (id, kind, number, job_id, title, file_name, content, fingerprint, pdf, pdf_sha256, issued_at, issued_by) VALUES
    ('st', 'statement', 'S-000001', '', '', '', '{"from":"2026-01-01","to":"2026-03-31","closing":1250}', '', x'00', '', 'now', 's1'),
    ('in', 'invoice', 'I-000001', 'j', '', '', '{}', '', x'00', '', 'now', 's1');
  INSERT INTO journal (seq, at, by, what, detail, previous, hash) VALUES
    (1, 'now', 's1', 'till.issueStatement', '{"balance":1250,"customer":"c","statement":"S-000001"}', '0', 'h'),
    (2, 'now', 's1', 'office.addStaff', '{}', 'h', 'i');`;

describe('each migration, with data', () => {
  test('the_shop makes every table STRICT', () => {
    migrate(0, () => {});
    const loose = direct((db) =>
      db.prepare("SELECT name FROM pragma_table_list WHERE schema = 'main' AND strict = 0").all(),
    );
    expect(loose).toEqual([{ name: 'sqlite_schema' }]);
  });

  test('append_only leaves the rows that were there, and lets nobody change them any more', () => {
    migrate(1, (db) => db.exec(`${ADA};${ENTRY}`));
    direct((db) => {
      expect(db.prepare('SELECT seq, what FROM journal').all()).toEqual([
        { seq: 1, what: 'office.openShop' },
      ]);
      expect(() => db.exec("UPDATE journal SET what = 'nothing'")).toThrow('append-only: journal');
      expect(() => db.exec('DELETE FROM journal')).toThrow('append-only: journal');
    });
  });

  test('bench_in_depth keeps readings, jobs and engine models, with nothing said of what is new', () => {
    migrate(2, (db) => db.exec(`${ADA};${WITH_A_READING}`));
    direct((db) => {
      expect(db.prepare('SELECT text, verdict, position FROM reading').all()).toEqual([
        { text: '0.3', verdict: 'within', position: null },
      ]);
      expect(db.prepare('SELECT complaint, engine_hours FROM job').all()).toEqual([
        { complaint: 'Smokes', engine_hours: null },
      ]);
      expect(db.prepare('SELECT make, variant_of FROM engine_model').all()).toEqual([
        { make: 'Corvane', variant_of: null },
      ]);
      expect(db.prepare('SELECT outcome, detail FROM hold_point_event').all()).toEqual([
        { outcome: 'passed', detail: '' },
      ]);
    });
  });

  test('append_only_bench leaves a check that was there, and lets nobody change it any more', () => {
    migrate(3, (db) => db.exec(`${ADA};${A_GAUGE_CHECKED}`));
    direct((db) => {
      expect(db.prepare('SELECT good FROM gauge_check').all()).toEqual([{ good: 1 }]);
      expect(() => db.exec('UPDATE gauge_check SET good = 0')).toThrow('append-only: gauge_check');
    });
  });

  test('wrench_length keeps wrenches and pulls, with no length made up for them', () => {
    migrate(4, (db) => db.exec(`${ADA};${WITH_A_READING};${A_BOLT_PULLED}`));
    direct((db) => {
      expect(db.prepare('SELECT name, range_high, length FROM gauge').all()).toEqual([
        { name: 'Wrench', range_high: 60, length: null },
      ]);
      expect(
        db.prepare('SELECT bolt, setting, extension, wrench_length FROM torque_pull').all(),
      ).toEqual([{ bolt: 3, setting: 9.2, extension: 60, wrench_length: null }]);
      // What was pulled stays as it was written: a length can't be added to it afterwards either.
      expect(() => db.exec('UPDATE torque_pull SET wrench_length = 240')).toThrow(
        'append-only: torque_pull',
      );
    });
  });

  test('till_in_depth keeps bills as they were: for work, due at once, with one option', () => {
    migrate(5, (db) => db.exec(`${ADA};${WITH_A_READING};${A_BILL_PAID}`));
    direct((db) => {
      expect(db.prepare('SELECT total, sort, declined, due_on FROM invoice').all()).toEqual([
        { total: 5000, sort: 'work', declined: '[]', due_on: null },
      ]);
      expect(db.prepare('SELECT total, options FROM estimate').all()).toEqual([
        { total: 5000, options: '[]' },
      ]);
      expect(db.prepare('SELECT amount, option, declined FROM approval').all()).toEqual([
        { amount: 5000, option: 'a', declined: '[]' },
      ]);
      expect(db.prepare('SELECT number, price_rule, core_charge FROM part').all()).toEqual([
        { number: 'VK-1', price_rule: 'fixed', core_charge: 0 },
      ]);
      expect(db.prepare('SELECT hourly_cost FROM staff').all()).toEqual([{ hourly_cost: 0 }]);
    });
  });

  test('append_only_till sets what was paid against its invoice, and closes the books', () => {
    migrate(6, (db) => db.exec(`${ADA};${WITH_A_READING};${A_BILL_PAID}`));
    direct((db) => {
      // 60.00 paid in two, 5.00 given back, 50.00 billed: 5.00 are still the customer's.
      expect(db.prepare('SELECT job_id, invoice_id, amount FROM application').all()).toEqual([
        { job_id: 'j', invoice_id: 'i', amount: 5000 },
      ]);
      expect(() => db.exec('UPDATE application SET amount = 1')).toThrow(
        'append-only: application',
      );
    });
  });

  test('parts_room keeps the shelf: nothing promised, nothing on order, packs of one', () => {
    migrate(7, (db) => db.exec(`${ADA};${A_SHELF}`));
    direct((db) => {
      expect(db.prepare('SELECT number, pack_size, superseded_by FROM part').all()).toEqual([
        { number: 'VK-1', pack_size: 1000, superseded_by: null },
        { number: 'VK-2', pack_size: 1000, superseded_by: null },
      ]);
      expect(
        db.prepare('SELECT kind, quantity, reserved, ordered FROM stock_movement').all(),
      ).toEqual([
        { kind: 'received', quantity: 3500, reserved: 0, ordered: 0 },
        { kind: 'issued', quantity: -1000, reserved: 0, ordered: 0 },
      ]);
    });
  });

  test('append_only_parts gives what moved its worth, and each supplier a place in the list', () => {
    migrate(8, (db) => db.exec(`${ADA};${A_SHELF}`));
    direct((db) => {
      expect(db.prepare('SELECT kind, worth FROM stock_movement').all()).toEqual([
        { kind: 'received', worth: 1418 },
        { kind: 'issued', worth: -405 },
      ]);
      expect(() => db.exec('UPDATE stock_movement SET worth = 0')).toThrow(
        'append-only: stock_movement',
      );
      const suppliers = db.prepare<[], { id: string; name: string }>('SELECT * FROM supplier');
      expect(suppliers.all().map(({ name }) => name)).toEqual(['Ring House']);
      expect(z.uuid().safeParse(suppliers.get()?.id).success).toBe(true);
    });
  });

  test('stock_sums changes no row, and a shelf is added up from its index alone', () => {
    migrate(9, (db) => db.exec(`${ADA};${A_SHELF}`));
    direct((db) => {
      const sums = "SELECT sum(quantity), sum(worth) FROM stock_movement WHERE part_id = 'p1'";
      expect(db.prepare(sums).raw().all()).toEqual([[2500, 0]]);
      const [step] = db.prepare<[], { detail: string }>(`EXPLAIN QUERY PLAN ${sums}`).all();
      expect(step?.detail).toContain('COVERING INDEX stock_movement_sums');
    });
  });

  test('diagnosis leaves the jobs as they were, with nothing found yet', () => {
    migrate(10, (db) => db.exec(`${ADA};${WITH_A_READING}`));
    direct((db) => {
      expect(db.prepare('SELECT complaint FROM job').all()).toEqual([{ complaint: 'Smokes' }]);
      db.exec(
        `INSERT INTO finding (id, job_id, checked, found, figures, words, work, by, at)
          VALUES ('f', 'j', 'spark', 'sound', '[]', '', '[]', 's1', 'now')`,
      );
      expect(() => db.exec("UPDATE finding SET found = 'wants-work'")).toThrow(
        'append-only: finding',
      );
    });
  });

  test('amendments keeps jobs as they were promised, and finds whose the statements are', () => {
    migrate(11, (db) => db.exec(`${ADA};${WITH_A_READING};${A_STATEMENT}`));
    direct((db) => {
      expect(db.prepare('SELECT complaint, promised_for FROM job').all()).toEqual([
        { complaint: 'Smokes', promised_for: null },
      ]);
      for (const table of ['job_promise', 'promise_told', 'intake_amendment', 'expected_change'])
        expect(db.prepare(`SELECT count(*) AS n FROM ${table}`).get()).toEqual({ n: 0 });
      expect(db.prepare('SELECT * FROM customer_statement').all()).toEqual([
        {
          paper_id: 'st',
          customer_id: 'c',
          from_date: '2026-01-01',
          to_date: '2026-03-31',
          closing: 1250,
        },
      ]);
      expect(() => db.exec('UPDATE customer_statement SET closing = 0')).toThrow(
        'append-only: customer_statement',
      );
    });
  });

  test('billed_parts looks at the jobs that are billed and still here, and at no other', () => {
    const gone = WITH_A_READING.split('INSERT INTO job ')[1]
      ?.split(';')[0]
      ?.replace("('j', 1", "('gone', 2")
      .replace("'taken-in'", "'handed-over'");
    migrate(12, (db) =>
      db.exec(
        `${ADA};${WITH_A_READING};${A_BILL_PAID};INSERT INTO job ${gone};
          INSERT INTO invoice (id, number, job_id, lines, totals, total, currency, note, paper_id, by, at)
            VALUES ('i2', 2, 'gone', '[]', '{}', 5000, 'USD', '', 'p', 's1', 'now')`,
      ),
    );
    direct((db) => {
      expect(db.prepare('SELECT id, parts_to_issue FROM job ORDER BY id').raw().all()).toEqual([
        ['gone', 0],
        ['j', 1],
      ]);
      const [step] = db
        .prepare<[], { detail: string }>(
          'EXPLAIN QUERY PLAN SELECT id FROM job WHERE parts_to_issue = 1',
        )
        .all();
      expect(step?.detail).toContain('job_parts_to_issue');
      db.exec(
        `INSERT INTO handover_matter (id, job_id, matter, says, items, reason, by, at)
          VALUES ('h', 'j', 'unpriced', '', '[]', 'As agreed', 's1', 'now');
        INSERT INTO part_from_elsewhere (id, job_id, part_id, quantity, reason, by, at)
          VALUES ('f', 'j', 'pt', 1000, 'The customer brought it', 's1', 'now')`,
      );
      for (const table of ['handover_matter', 'part_from_elsewhere'])
        expect(() => db.exec(`UPDATE ${table} SET reason = ''`)).toThrow(`append-only: ${table}`);
    });
  });

  test('work_kinds_and_fillings holds what was begun for what it was, and stops no machine', () => {
    migrate(13, (db) =>
      db.exec(
        `${ADA};${WITH_A_READING};INSERT INTO job_build (job_id, steps, at) VALUES ('j', '[]', 'now')`,
      ),
    );
    direct((db) => {
      expect(db.prepare('SELECT work, touched, work_reason FROM job_build').all()).toEqual([
        { work: null, touched: '[]', work_reason: '' },
      ]);
      expect(db.prepare('SELECT complaint, do_not_run FROM job').all()).toEqual([
        { complaint: 'Smokes', do_not_run: '' },
      ]);
      expect(
        db
          .prepare('SELECT valves, oil_amount, oil_grade, fuel_ratio, plug FROM engine_model')
          .all(),
      ).toEqual([{ valves: null, oil_amount: null, oil_grade: '', fuel_ratio: null, plug: '' }]);
    });
  });

  afterAll(() => {
    expect([...tested].sort()).toEqual(known.map(({ tag }) => tag).sort());
  });
});

describe('our runner', () => {
  const extra = (statements: string[]): Migration[] => [
    ...known,
    { tag: '9999_extra', sha256: 'e', statements },
  ];
  const parentAndChild = () =>
    direct((db) =>
      db.exec(
        'CREATE TABLE parent (id TEXT PRIMARY KEY) STRICT;' +
          'CREATE TABLE child (id TEXT PRIMARY KEY, parent_id TEXT REFERENCES parent (id) ON DELETE CASCADE) STRICT;' +
          "INSERT INTO parent VALUES ('p'); INSERT INTO child VALUES ('c', 'p');",
      ),
    );

  test('rebuilds a parent without losing its children', () => {
    storeAt(known.length);
    parentAndChild();
    openStore(folder, {
      migrations: extra([
        'CREATE TABLE parent_new (id TEXT PRIMARY KEY, note TEXT) STRICT',
        'INSERT INTO parent_new (id) SELECT id FROM parent',
        'DROP TABLE parent',
        'ALTER TABLE parent_new RENAME TO parent',
      ]),
    }).close();
    expect(direct((db) => db.prepare('SELECT * FROM child').all())).toEqual([
      { id: 'c', parent_id: 'p' },
    ]);
  });

  test('backs up first, and takes everything back when a row would point nowhere', () => {
    storeAt(known.length);
    parentAndChild();
    const refusal = refusalOf(() =>
      openStore(folder, {
        migrations: extra(['DELETE FROM parent', 'CREATE TABLE more (id TEXT) STRICT']),
      }),
    );
    expect(refusal.code).toBe('MIGRATION_FAILED');
    direct((db) => {
      expect(db.prepare('SELECT count(*) AS n FROM parent').get()).toEqual({ n: 1 });
      expect(db.prepare("SELECT name FROM sqlite_schema WHERE name = 'more'").all()).toEqual([]);
      expect(db.pragma('user_version', { simple: true })).toBe(known.length);
    });
    const copies = readdirSync(join(folder, 'backups'));
    expect(copies).toHaveLength(1);
    const copy = new Database(join(folder, 'backups', copies[0] ?? ''), { readonly: true });
    expect(copy.prepare('SELECT * FROM child').all()).toEqual([{ id: 'c', parent_id: 'p' }]);
    copy.close();
  });

  test('does not back up a store that it has just made', () => {
    storeAt(known.length);
    expect(readdirSync(folder)).not.toContain('backups');
  });
});

describe('a store that isn’t opened is left as it was', () => {
  const refusedUntouched = (open = () => openStore(folder)) => {
    const before = readFileSync(file());
    const refusal = refusalOf(open);
    expect(readFileSync(file()).equals(before)).toBe(true);
    // Two sentences: what happened, and what to do next.
    expect(refusal.message).toMatch(/^[A-Z].+\. [A-Z].+/);
    return refusal.code;
  };

  test('text', () => {
    writeFileSync(file(), 'Dear diary,\n'.repeat(50));
    expect(refusedUntouched()).toBe('NOT_OURS');
  });

  test('another program’s SQLite file', () => {
    direct((db) => db.exec('CREATE TABLE album (id TEXT); PRAGMA application_id = 7'));
    expect(refusedUntouched()).toBe('NOT_OURS');
  });

  test('a file from a newer program', () => {
    openStore(folder, {
      migrations: [...known, { tag: '9999_future', sha256: 'f', statements: [] }],
    }).close();
    expect(refusedUntouched()).toBe('NEWER_PROGRAM');
  });

  test('a file whose migrations were others', () => {
    const [first, ...rest] = known;
    if (first === undefined) throw new Error('There are no migrations.');
    openStore(folder, { migrations: [{ ...first, sha256: 'edited' }, ...rest] }).close();
    expect(refusedUntouched()).toBe('MIGRATIONS_DIFFER');
  });

  test('a damaged file', () => {
    storeAt(known.length);
    const bytes = readFileSync(file());
    bytes.fill(0x5a, 4096 * 2, 4096 * 6);
    writeFileSync(file(), bytes);
    expect(refusedUntouched()).toBe('DAMAGED');
  });

  test('one that another program has open, and it is free again afterwards', () => {
    const first = openStore(folder);
    expect(refusalOf(() => openStore(folder)).code).toBe('IN_USE');
    first.close();
    openStore(folder).close();
  });

  test('the id in the header is ours', () => {
    storeAt(known.length);
    expect(readFileSync(file()).readUInt32BE(68)).toBe(APPLICATION_ID);
  });
});
