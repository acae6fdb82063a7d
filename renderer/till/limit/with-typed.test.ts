import { expect, test } from 'vitest';
import { JobId, jobCode } from '../../../shared/contract/ids.ts';
import { type BillAhead, type BillTerms, Line } from '../../../shared/contract/till/index.ts';
import { draftOf, type MoneyRules } from '../lines/draft-line.ts';
import { withTyped } from './with-typed.ts';

const RULES: MoneyRules = {
  currency: 'USD',
  locale: 'en-US',
  rounding: 'half-up',
  labourRate: 8_000,
  labourRates: [],
  labourCost: null,
  outsideMarkupPpm: 0,
  supplies: null,
};
const TERMS: BillTerms = {
  rounding: 'half-up',
  taxBasis: 'invoice',
  taxes: [],
  pricesIncludeTax: false,
  exemptBy: '',
  takenOut: [],
  validUntil: null,
  supplies: null,
};
const line = (description: string, amount: number): Line =>
  Line.parse({
    kind: 'outside',
    description,
    partId: null,
    partNumber: '',
    quantity: 1_000,
    unit: 'pc',
    unitPrice: amount,
    unitCost: null,
    amount,
  });
const AHEAD: BillAhead = {
  jobId: JobId.parse('01900000-0000-7000-8000-000000000001'),
  jobCode: jobCode(42),
  total: 2_433,
  unpriced: ['Bore to +0.25'],
  approved: 15_000,
  limit: 15_000,
  over: 0,
  stopped: false,
  estimate: null,
  beyond: [
    { because: 'decided', line: line('Gasket', 2_433), priceToSet: false, held: 0 },
    { because: 'decided', line: line('Bore to +0.25', 0), priceToSet: true, held: 0 },
  ],
};

test('a price that is typed counts before it is written', () => {
  const [gasket, bore] = draftOf([line('Gasket', 2_433), line('Bore to +0.25', 0)], RULES);
  if (gasket === undefined || bore === undefined) throw new Error('There are two lines.');
  const typed = (unitPrice: string) =>
    withTyped(
      AHEAD,
      { lines: [gasket, { ...bore, unitPrice }], discount: null, changed: true },
      { rules: RULES, terms: TERMS },
    );
  expect(typed('')).toMatchObject({ total: 2_433, unpriced: ['Bore to +0.25'], over: 0 });
  expect(typed('204.47')).toMatchObject({ total: 22_880, unpriced: [], over: 7_880 });
  // What is not put over yet counts beside what is typed.
  const alone = withTyped(
    AHEAD,
    { lines: [gasket], discount: null, changed: true },
    { rules: RULES, terms: TERMS },
  );
  expect(alone).toMatchObject({ total: 2_433, unpriced: ['Bore to +0.25'] });
});

test('nothing typed leaves it as the desk says', () => {
  const unchanged = { lines: [], discount: null, changed: false };
  expect(withTyped(AHEAD, unchanged, { rules: RULES, terms: TERMS })).toBe(AHEAD);
});
