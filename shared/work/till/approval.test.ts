import fc from 'fast-check';
import { expect, test } from 'vitest';
import { approvedLimit, overApproval } from './approval.ts';

const amount = fc.nat(10_000_000);
const NO_TOLERANCE = { tolerancePpm: 0, toleranceCap: null };
const on = (day: number) => new Date(Date.UTC(2026, 0, day)).toISOString();

test('the latest approval is the limit; before any, the spending limit; before that, nothing', () => {
  fc.assert(
    fc.property(fc.option(amount), fc.array(amount), (spendingLimit, amounts) => {
      const approvals = amounts.map((each, day) => ({ amount: each, at: on(day) }));
      const limit = approvedLimit({ spendingLimit, approvals, overrides: [] }, NO_TOLERANCE);
      expect(limit).toBe(amounts.length > 0 ? amounts[amounts.length - 1] : (spendingLimit ?? 0));
    }),
  );
});

test('a bill of exactly the limit is within it', () => {
  expect(overApproval(12_000, 12_000)).toBe(0);
  expect(overApproval(12_001, 12_000)).toBe(1);
});

test('a tolerance is a share of what was approved, and never more than its cap', () => {
  const job = { spendingLimit: null, approvals: [{ amount: 50_000, at: on(1) }], overrides: [] };
  expect(approvedLimit(job, { tolerancePpm: 100_000, toleranceCap: null })).toBe(55_000);
  expect(approvedLimit(job, { tolerancePpm: 100_000, toleranceCap: 2_000 })).toBe(52_000);
});

test('an override of the owner holds until the customer is asked again', () => {
  const first = { amount: 50_000, at: on(1) };
  const overrides = [{ amount: 60_000, at: on(2) }];
  const job = { spendingLimit: null, approvals: [first], overrides };
  expect(approvedLimit(job, NO_TOLERANCE)).toBe(60_000);
  const atOnce = { ...job, overrides: [{ amount: 60_000, at: on(1) }] };
  expect(approvedLimit(atOnce, NO_TOLERANCE)).toBe(60_000);
  const asked = { ...job, approvals: [first, { amount: 52_000, at: on(3) }] };
  expect(approvedLimit(asked, NO_TOLERANCE)).toBe(52_000);
});
