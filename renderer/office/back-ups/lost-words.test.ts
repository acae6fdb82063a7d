import { expect, test } from 'vitest';
import { lostWords } from './lost-words.ts';

const NOTHING = {
  storeEntries: 9,
  entries: 1,
  sameShop: true,
  customers: 0,
  jobs: [],
  invoices: [],
  payments: 0,
  readings: 0,
};

test('what would be lost is named, a line each', () => {
  const jobs = Array.from({ length: 14 }, (_, index) => `J0000${index + 10}`);
  expect(lostWords({ ...NOTHING, jobs, invoices: ['I-000007'], payments: 1, readings: 2 })).toEqual(
    [
      '14 jobs: J000010, J000011, J000012, J000013, J000014, J000015, J000016, J000017, J000018, J000019, J000020, J000021 and 2 more',
      'Invoice I-000007',
      '1 payment',
      '2 readings',
    ],
  );
});

test('when it is none of these there is no line', () => {
  expect(lostWords(NOTHING)).toEqual([]);
});
