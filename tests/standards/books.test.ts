import { describe, expect, test } from 'vitest';
import { ageing, ageOf } from '../../shared/money/books/index.ts';
import { discountOn } from '../../shared/money/index.ts';
import { addDays } from '../../shared/work/calendar.ts';

/**
 * Ageing of receivables: Lumen Learning, Financial Accounting (courses.lumenlearning.com), "Accounts
 * Receivable Aging Analysis", Larkin Co.: by age since the invoice, 0-30, 31-60, 61-90 and more than 90 days,
 * as of 31 December. Invoice dates and column figures were read there; the year is ours, as none is given.
 */
const AS_OF = '2026-12-31';

describe('Larkin Co., ageing by invoice date', () => {
  const invoiced = (invoicedOn: string, open = 100) => ({ invoicedOn, dueOn: null, open });
  /** An item that lies in the middle of a column. */
  const column = (days: number, dollars: number) => invoiced(addDays(AS_OF, -days), dollars * 100);

  test('an invoice of 15 December is 16 days old: 0-30; one of 30 November is 31: 31-60', () => {
    expect(ageOf(invoiced('2026-12-15'), 'invoice-date', AS_OF)).toBe('to-30');
    expect(ageOf(invoiced('2026-11-30'), 'invoice-date', AS_OF)).toBe('to-60');
  });

  test('at net 30 that invoice of 30 November is one day overdue', () => {
    const dueOn = addDays('2026-11-30', 30);
    const item = { ...invoiced('2026-11-30'), dueOn };
    expect(ageOf(item, 'due-date', dueOn)).toBe('not-due');
    expect(ageOf(item, 'due-date', AS_OF)).toBe('to-30');
  });

  const columns = (dollars: readonly [number, number, number, number]) =>
    ageing(
      [15, 45, 75, 120].map((days, index) => column(days, dollars[index] ?? 0)),
      'invoice-date',
      AS_OF,
    );

  // Collected: 99, 95, 85 and 5 %. What isn't is the allowance (computed there and here).
  const NOT_COLLECTED = { 'to-30': 10_000, 'to-60': 50_000, 'to-90': 150_000, 'over-90': 950_000 };
  const allowance = (aged: ReturnType<typeof ageing>) =>
    (['to-30', 'to-60', 'to-90', 'over-90'] as const).reduce(
      (sum, age) =>
        sum + discountOn(aged[age], { by: 'share', ppm: NOT_COLLECTED[age] }, 'half-up'),
      0,
    );

  test('all customers: 103,000, 97,500, 39,500 and 10,000 are 250,000; allowance 21,330', () => {
    const aged = columns([103_000, 97_500, 39_500, 10_000]);
    expect(aged).toEqual({
      'not-due': 0,
      'to-30': 10_300_000,
      'to-60': 9_750_000,
      'to-90': 3_950_000,
      'over-90': 1_000_000,
    });
    expect(Object.values(aged).reduce((sum, amount) => sum + amount)).toBe(25_000_000);
    expect(allowance(aged)).toBe(2_133_000);
  });

  test('customer G: 1,500, 30,000, 17,000 and 2,000 are 50,500; expected loss 5,965', () => {
    const aged = columns([1_500, 30_000, 17_000, 2_000]);
    expect(Object.values(aged).reduce((sum, amount) => sum + amount)).toBe(5_050_000);
    expect(allowance(aged)).toBe(596_500);
  });
});
