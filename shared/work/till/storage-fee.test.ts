import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { storageFee, storageLine } from './storage-fee.ts';

const RULE = { afterDays: 30, perDay: 250, cap: 10_000 };
const since = '2026-01-31';
const fee = (today: string, billed = 0) => storageFee({ since, today, billed }, RULE);

describe('storage', () => {
  // Common practice, no source: 31 January and thirty days are 2 March.
  test('costs nothing up to the last day without charge, and a day from the next', () => {
    expect(fee('2026-03-02')).toEqual({ waited: 30, charged: 0, amount: 0, toBill: 0 });
    expect(fee('2026-03-03')).toEqual({ waited: 31, charged: 1, amount: 250, toBill: 250 });
    expect(fee('2026-01-01')).toMatchObject({ waited: 0, amount: 0 });
  });

  test('never comes to more than its cap', () => {
    expect(fee('2026-04-11')).toMatchObject({ charged: 40, amount: 10_000 });
    expect(fee('2026-12-31')).toMatchObject({ charged: 304, amount: 10_000 });
  });

  test('is billed by the day, what was billed before taken off', () => {
    expect(storageLine(fee('2026-03-12'), RULE)).toMatchObject({
      description: 'Storage after 30 days without charge',
      quantity: 10_000,
      unit: 'day',
      unitPrice: 250,
      priceFrom: 'storage-rule',
    });
    expect(storageLine(fee('2026-03-12', 1000), RULE)).toMatchObject({ quantity: 6000 });
    expect(storageLine(fee('2026-03-12', 2500), RULE)).toBeNull();
  });

  test('is one sum where the cap cuts a day', () => {
    const rule = { afterDays: 0, perDay: 300, cap: 1000 };
    const due = storageFee({ since, today: '2026-02-10', billed: 0 }, rule);
    expect(storageLine(due, rule)).toMatchObject({
      description: 'Storage, 10 days, up to the most that is charged',
      quantity: 1000,
      unitPrice: 1000,
    });
  });

  test('a line always comes to what is to be billed', () => {
    const money = fc.nat(100_000);
    fc.assert(
      fc.property(
        fc.record({ afterDays: fc.nat(60), perDay: money, cap: fc.option(money) }),
        fc.nat(400),
        money,
        (rule, days, billed) => {
          const today = new Date(Date.UTC(2026, 0, 31 + days)).toISOString().slice(0, 10);
          const due = storageFee({ since, today, billed }, rule);
          const line = storageLine(due, rule);
          expect(line === null ? 0 : (line.quantity / 1000) * line.unitPrice).toBe(due.toBill);
          expect(due.amount).toBeLessThanOrEqual(rule.cap ?? due.amount);
        },
      ),
    );
  });

  test('refuses a rule that makes no sense', () => {
    expect(() => storageFee({ since, today: since, billed: 0 }, { ...RULE, perDay: 0.5 })).toThrow(
      RangeError,
    );
  });
});
