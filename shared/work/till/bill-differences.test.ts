import fc from 'fast-check';
import { expect, test } from 'vitest';
import { billDifferences } from './bill-differences.ts';

const line = (description: string, amount: number, partId: string | null = null) => ({
  kind: partId === null ? 'labour' : 'part',
  description,
  partId,
  quantity: 1_000,
  amount,
});

test('names what changed, what was left out, and what came on top', () => {
  expect(
    billDifferences(
      [line('Strip', 4_000), line('Hone', 3_000), line('Ring set', 2_000, 'p1')],
      [line('Strip', 5_000), line('Rings, 0.25 oversize', 2_400, 'p1'), line('Gasket', 900, 'p2')],
    ),
  ).toEqual([
    { description: 'Strip', approved: 4_000, billed: 5_000 },
    { description: 'Rings, 0.25 oversize', approved: 2_000, billed: 2_400 },
    { description: 'Hone', approved: 3_000, billed: null },
    { description: 'Gasket', approved: null, billed: 900 },
  ]);
});

test('of two lines by the same words the one that stayed stays', () => {
  expect(
    billDifferences(
      [line('Valve job', 4_000), line('Valve job', 6_000)],
      [line('Valve job', 6_000), line('Valve job', 4_500)],
    ),
  ).toEqual([{ description: 'Valve job', approved: 4_000, billed: 4_500 }]);
});

test('the differences make up the difference, and a bill does not differ from itself', () => {
  const lines = fc.array(
    fc
      .tuple(fc.constantFrom('a', 'b', 'c'), fc.integer({ min: 0, max: 50 }))
      .map(([name, amount]) => line(name, amount)),
    { maxLength: 8 },
  );
  const sum = (amounts: number[]) => amounts.reduce((total, amount) => total + amount, 0);
  fc.assert(
    fc.property(lines, lines, (approved, billed) => {
      const differences = billDifferences(approved, billed);
      expect(sum(differences.map((each) => (each.billed ?? 0) - (each.approved ?? 0)))).toBe(
        sum(billed.map(({ amount }) => amount)) - sum(approved.map(({ amount }) => amount)),
      );
      expect(billDifferences(billed, billed.toReversed())).toEqual([]);
    }),
  );
});
