import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays } from '../../work/calendar.ts';
import { sumMinor } from '../amount.ts';
import { AGE_BASES, ageing, ageOf, daysOld } from './ageing.ts';

const item = (invoicedOn: string, dueOn: string | null = null, open = 100) => ({
  invoicedOn,
  dueOn,
  open,
});

test('by due date nothing is overdue on the day itself; by invoice date that day counts already', () => {
  expect(ageOf(item('2026-03-02'), 'due-date', '2026-03-02')).toBe('not-due');
  expect(ageOf(item('2026-03-02'), 'due-date', '2026-03-03')).toBe('to-30');
  expect(ageOf(item('2026-03-02'), 'invoice-date', '2026-03-02')).toBe('to-30');
  expect(ageOf(item('2026-03-02', '2026-04-01'), 'due-date', '2026-04-01')).toBe('not-due');
  expect(daysOld(item('2026-03-02', '2026-04-01'), 'due-date', '2026-03-31')).toBe(-1);
});

test.each([
  [30, 'to-30'],
  [31, 'to-60'],
  [60, 'to-60'],
  [61, 'to-90'],
  [90, 'to-90'],
  [91, 'over-90'],
])('%i days after it was due it is %s', (days, age) => {
  const due = addDays('2026-06-30', -days);
  expect(ageOf(item('2026-01-01', due), 'due-date', '2026-06-30')).toBe(age);
});

test('the ages add up to what is open', () => {
  const items = fc.array(
    fc.record({
      invoicedOn: fc.integer({ min: -400, max: 0 }).map((days) => addDays('2026-06-30', days)),
      dueOn: fc.option(
        fc.integer({ min: -400, max: 60 }).map((days) => addDays('2026-06-30', days)),
      ),
      open: fc.integer({ min: -1_000_000, max: 1_000_000 }),
    }),
  );
  fc.assert(
    fc.property(items, fc.constantFrom(...AGE_BASES), (all, basis) => {
      expect(sumMinor(Object.values(ageing(all, basis, '2026-06-30')))).toBe(
        sumMinor(all.map(({ open }) => open)),
      );
    }),
  );
});
