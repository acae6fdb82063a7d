import { safe } from '@orpc/client';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Reading } from '../../shared/contract/bench/index.ts';
import type { JobId } from '../../shared/contract/ids.ts';
import { addCorvane, openTestShop, plainIntake, type TestShop } from './shop.ts';

/** No sequence of calls loses a reading or edits one, whatever is refused in between. */

let shop: TestShop;
let jobId: JobId;
/** Everything that a call ever answered with, in order. */
const kept: Reading[] = [];

beforeAll(async () => {
  shop = await openTestShop();
  const { desk, by } = shop;
  const { model } = await addCorvane(shop);
  ({ jobId } = await desk.counter.takeIn(plainIntake(by)));
  await desk.bench.chooseEngineModel({ by, jobId, engineModelId: model.id });
});
afterAll(() => shop.close());

const PLACES = [
  ['coil-air-gap', 'c1-leg-1'],
  ['coil-air-gap', 'c1-leg-2'],
  ['bore', 'c1-top-along'],
  ['plug-gap', 'c1-only'],
  ['valve-lash-intake', 'c1-only'],
] as const;

const step = fc.record({
  place: fc.constantFrom(...PLACES),
  phase: fc.constantFrom('as-received', 'final'),
  text: fc.constantFrom('0.3', '0.03', '3', '.012"', '68.02', 'wide', '0.15 mm', '12 thou', '0,28'),
  keepAsTyped: fc.boolean(),
  position: fc.constantFrom(null, 'at-top-dead-centre'),
  /** Which of the readings so far is corrected, if any: also ones that were corrected already. */
  corrects: fc.option(fc.nat(30), { nil: null, freq: 2 }),
});

const asWritten = ({ superseded: _, ...reading }: Reading) => reading;

test('no sequence of readings and corrections loses or edits one', async () => {
  const { desk, by } = shop;
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 12 }), async (steps) => {
      for (const { place, corrects, ...more } of steps) {
        const old = corrects === null ? undefined : kept[corrects % Math.max(kept.length, 1)];
        const at = old ?? { feature: place[0], place: place[1], phase: more.phase };
        const { data } = await safe(
          desk.bench.record({
            by,
            jobId,
            ...more,
            feature: at.feature,
            place: at.place,
            phase: at.phase,
            unit: 'mm',
            supersedes: old?.id ?? null,
          }),
        );
        if (data !== undefined) kept.push(data);
      }
      const { features } = await desk.bench.sheet({ jobId });
      const shown = new Map(
        features
          .flatMap(({ places }) => places.flatMap(({ readings }) => readings))
          .map((reading) => [reading.id, reading]),
      );
      // Each one that was ever answered with is there, word for word; and there is nothing else.
      expect(shown.size).toBe(kept.length);
      const corrected = new Set(kept.map(({ supersedes }) => supersedes));
      for (const reading of kept) {
        const now = shown.get(reading.id);
        expect(now && asWritten(now)).toEqual(asWritten(reading));
        expect(now?.superseded).toBe(corrected.has(reading.id));
      }
      // Nothing is corrected twice.
      const corrections = kept.flatMap(({ supersedes }) => supersedes ?? []);
      expect(new Set(corrections).size).toBe(corrections.length);
    }),
    { numRuns: 15, endOnFailure: true },
  );
  expect(kept.filter(({ supersedes }) => supersedes !== null).length).toBeGreaterThan(0);
});

test('the store itself refuses to change or to delete a reading', () => {
  const { store } = shop.context;
  for (const sql of ["UPDATE reading SET text = '9'", 'DELETE FROM reading'])
    expect(() => store.write((tables) => tables.run(sql))).toThrow(
      expect.objectContaining({
        cause: expect.objectContaining({ message: 'append-only: reading' }),
      }),
    );
});
