import { expect, test } from 'vitest';
import { journalFacts } from './journal-facts.ts';

const JOB = '01a21222-041d-73c9-9c5b-88b4d7a023dc';
const OTHER = '01a21222-041d-73c9-9c5b-88b4d7a023dd';
const writing = {
  money: (minor: number) => `$${(minor / 100).toFixed(2)}`,
  quantity: (thousandths: number) => String(thousandths / 1000),
  date: (iso: string) => `day ${iso}`,
  instant: (iso: string) => `moment ${iso}`,
};
const factsOf = (detail: unknown, what = 'till.takePayment') =>
  journalFacts({ what, detail: JSON.stringify(detail), names: { [JOB]: 'J000012' } }, writing);

test('ids are told by what they stand for; what has no name, and what is empty, is left out', () => {
  expect(
    factsOf({ job: JOB, reading: OTHER, sha256: 'ab'.repeat(32), reason: '', left: null }),
  ).toEqual([{ name: 'job', value: 'J000012' }]);
});

test('money, quantities, dates and states are as the shop writes them', () => {
  expect(
    factsOf({ amount: 1250, quantity: -1500, exemptUntil: '2027-06-12', to: 'on-the-bench' }),
  ).toEqual([
    { name: 'amount', value: '$12.50' },
    { name: 'quantity', value: '-1.5' },
    { name: 'exempt until', value: 'day 2027-06-12' },
    { name: 'to', value: 'On the bench' },
  ]);
  expect(factsOf({ difference: 35 }, 'till.cashUp')).toEqual([
    { name: 'difference', value: '$0.35' },
  ]);
});

test('what is said twice is said once, and words that are no JSON stand as they are', () => {
  expect(factsOf({ part: 'OS-172-010', number: 'OS-172-010' })).toHaveLength(1);
  expect(journalFacts({ what: '', detail: 'plain words', names: {} }, writing)).toEqual([
    { name: '', value: 'plain words' },
  ]);
});
