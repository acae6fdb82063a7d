import { eq, sql } from 'drizzle-orm';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { verifyJournal } from '../../../db/journal.ts';
import * as schema from '../../../db/schema/index.ts';
import { openTestShop, type TestShop } from '../shop.ts';

let shop: TestShop;
beforeAll(async () => {
  shop = await openTestShop();
});
afterAll(() => shop.close());

const RECORDS = [
  'reading',
  'approval',
  'stock_movement',
  'payment',
  'issued_paper',
  'journal',
  'hold_point_event',
  'job_move',
  'specification',
  'confirmation',
  'estimate',
  'invoice',
  'contradiction',
  'source_file',
  'gauge_check',
  'finding',
  'decision',
  'build_sheet',
  'torque_pull',
  'test_run',
  'photo',
  'limit_override',
  'credit_note',
  'receipt',
  'application',
  'clock_event',
  'cash_up',
  'part_photo',
  'core_movement',
  'purchase_order',
  'purchase_order_line',
  'job_promise',
  'promise_told',
  'intake_amendment',
  'expected_change',
  'customer_statement',
  'handover_matter',
  'part_from_elsewhere',
];

describe('records are never edited or removed', () => {
  test.each(RECORDS)('%s refuses it in the store itself', async (table) => {
    const triggers = shop.context.store.read
      .select({ name: sql<string>`name` })
      .from(sql`sqlite_schema`)
      .where(sql`type = 'trigger' AND tbl_name = ${table} AND sql LIKE '%RAISE(ABORT%'`)
      .all();
    expect(triggers.map(({ name }) => name).sort()).toEqual([
      `${table}_no_delete`,
      `${table}_no_update`,
    ]);
  });
});

describe('the journal', () => {
  test('finds the entry that was tampered with', async () => {
    const { desk, by, context } = shop;
    for (const name of ['Ada', 'Bo', 'Cy']) await desk.office.addStaff({ by, name, role: 'bench' });
    context.store.write((store) => {
      store.run('DROP TRIGGER journal_no_update');
      store
        .update(schema.journal)
        .set({ detail: '{"name":"Di"}' })
        .where(eq(schema.journal.seq, 3))
        .run();
    });
    expect(verifyJournal(context.store.read)).toEqual({
      entries: 4,
      intact: false,
      firstBroken: 3,
    });
  });
});

describe('stock', () => {
  test('on hand is the sum of the movements and never below nothing', async () => {
    const { desk, by } = shop;
    const part = await desk.parts.add({ by, number: 'GK-1', description: 'Gasket', price: 100 });
    const movement = fc.record({
      kind: fc.constantFrom('received' as const, 'scrapped' as const, 'counted' as const),
      quantity: fc.integer({ min: 1, max: 5_000 }),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(movement, { maxLength: 8 }), async (movements) => {
        for (const { kind, quantity } of movements) {
          const moved = desk.parts.move({ by, partId: part.id, kind, quantity, reason: 'test' });
          await moved.catch((error: unknown) =>
            expect(error).toMatchObject({ code: 'NOT_ON_THE_SHELF', defined: true }),
          );
        }
        const { part: now, movements: all } = await desk.parts.part({ id: part.id });
        expect(now.onHand).toBe(all.reduce((sum, each) => sum + each.quantity, 0));
        expect(now.onHand).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 25 },
    );
  });
});
