import { expect, test } from 'vitest';
import type { BillTerms, EstimateOption, Line } from '../../../shared/contract/till/index.ts';
import { drawUp } from '../../../shared/money/index.ts';
import { declinedBefore, totalWithout } from './use-approval-draft.ts';

const TERMS: BillTerms = {
  rounding: 'half-up',
  taxBasis: 'invoice',
  taxes: [{ name: 'State', ratePpm: 62_500, kinds: ['part'] }],
  pricesIncludeTax: false,
  exemptBy: '',
  takenOut: [],
  supplies: { ppm: 50_000, kinds: ['part'], cap: null },
  validUntil: null,
};
const line = (more: Partial<Line>): Line => ({
  kind: 'part',
  description: 'Piston',
  partId: null,
  partNumber: '',
  quantity: 1_000,
  unit: 'pc',
  unitPrice: 6_000,
  unitCost: null,
  priceFrom: 'typed',
  workKind: '',
  note: '',
  discount: null,
  discounted: 0,
  amount: 6_000,
  ...more,
});

test('without a declined part its tax and its share of the supplies go too', () => {
  const lines = [
    line({}),
    line({ description: 'Rope', unitPrice: 2_000, amount: 2_000 }),
    line({ kind: 'supplies', description: 'Supplies', priceFrom: 'supplies-rule' }),
  ];
  const { totals } = drawUp({ lines, discount: null }, TERMS);
  const option: EstimateOption = { key: 'a', label: '', lines, discount: null, totals };
  // By hand: 80.00 and 5 % of it, tax of 6.25 % on the parts; then the same of 60.00.
  expect(totalWithout(option, [], TERMS)).toBe(8_000 + 400 + 500);
  expect(totalWithout(option, [1], TERMS)).toBe(6_000 + 300 + 375);
});

test('what was declined last time is declined again until somebody says otherwise', () => {
  const lines = [line({}), line({ description: 'Rope' })];
  const rope = { declined: [{ line: 4, description: 'Rope', amount: 2_000 }] };
  expect(declinedBefore(lines, [])).toEqual([]);
  expect(declinedBefore(lines, [rope])).toEqual([1]);
  expect(declinedBefore(lines, [rope, { declined: [] }])).toEqual([]);
  expect(declinedBefore([line({ description: 'Rope' })], [rope])).toEqual([]);
});
