import { expect, test } from 'vitest';
import { approvedParts, neededParts } from './part-needs.ts';

test('lines of one part add up; what was declined, and what is no part, is left out', () => {
  const lines = [
    { partId: 'rings', quantity: 1_000 },
    { partId: null, quantity: 2_500 },
    { partId: 'plug', quantity: 1_000 },
    { partId: 'rings', quantity: 500 },
  ];
  expect(approvedParts({ lines, declined: [{ line: 2 }] })).toEqual(new Map([['rings', 1_500]]));
  expect(approvedParts({ lines, declined: [] }).get('plug')).toBe(1_000);
});

test('of each as much as was approved or ordered for the job alone, whichever is more', () => {
  const approved = new Map([
    ['rings', 1_000],
    ['plug', 2_000],
  ]);
  const special = new Map([
    ['rings', 3_000],
    ['plug', 1_000],
    ['coil', 1_000],
  ]);
  expect(neededParts(approved, special)).toEqual(
    new Map([
      ['rings', 3_000],
      ['plug', 2_000],
      ['coil', 1_000],
    ]),
  );
});
