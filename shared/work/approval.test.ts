import fc from 'fast-check';
import { expect, test } from 'vitest';
import { approvedLimit, overApproval } from './approval.ts';

const amount = fc.nat(10_000_000);

test('the latest approval is the limit; before any, the spending limit; before that, nothing', () => {
  fc.assert(
    fc.property(fc.option(amount), fc.array(amount), (spendingLimit, amounts) => {
      const limit = approvedLimit(
        spendingLimit,
        amounts.map((each) => ({ amount: each })),
      );
      expect(limit).toBe(amounts.length > 0 ? amounts[amounts.length - 1] : (spendingLimit ?? 0));
    }),
  );
});

test('a bill of exactly the limit is within it', () => {
  expect(overApproval(12_000, 12_000)).toBe(0);
  expect(overApproval(12_001, 12_000)).toBe(1);
});
