import fc from 'fast-check';
import { expect, test } from 'vitest';
import { approvedParts, billedParts, neededParts, openNeed, stands } from './part-needs.ts';

const part = (partId: string | null, quantity: number) => ({ kind: 'part', partId, quantity });

test('lines of one part add up; what was declined, and what is no part, is left out', () => {
  const lines = [part('rings', 1_000), part(null, 2_500), part('plug', 1_000), part('rings', 500)];
  expect(approvedParts({ lines, declined: [{ line: 2 }] })).toEqual(new Map([['rings', 1_500]]));
  expect(approvedParts({ lines, declined: [] }).get('plug')).toBe(1_000);
});

test('a core charge that names a part is no second part', () => {
  const lines = [
    part('starter', 1_000),
    { kind: 'core-charge', partId: 'starter', quantity: 1_000 },
  ];
  expect(approvedParts({ lines, declined: [] })).toEqual(new Map([['starter', 1_000]]));
  const bill = {
    lines: lines.map((line) => ({ ...line, amount: 500 })),
    lineCredits: [0, 0],
    wholeLines: [],
  };
  expect(billedParts([bill])).toEqual(new Map([['starter', 1_000]]));
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

const billOf = (quantity: number, amount: number, credit: number) => ({
  lines: [{ ...part('valve', quantity), amount }],
  lineCredits: [credit],
  wholeLines: credit === amount ? [0] : [],
});

test('a credit that comes to whole pieces takes those off, any other lowers the price', () => {
  expect(billedParts([billOf(2_000, 3_000, 1_500)])).toEqual(new Map([['valve', 1_000]]));
  expect(billedParts([billOf(2_000, 3_000, 1_000)])).toEqual(new Map([['valve', 2_000]]));
  expect(billedParts([billOf(1_000, 3_000, 1_500)])).toEqual(new Map([['valve', 1_000]]));
  expect(billedParts([billOf(2_000, 3_000, 3_000)])).toEqual(new Map([['valve', 0]]));
  // Warranty work: nothing is charged, and what nothing was credited of is still billed.
  expect(billedParts([{ ...billOf(1_000, 0, 0), wholeLines: [] }])).toEqual(
    new Map([['valve', 1_000]]),
  );
});

test('a bill of which no line is left makes way', () => {
  expect(stands(billOf(1_000, 500, 100))).toBe(true);
  expect(stands(billOf(1_000, 500, 500))).toBe(false);
});

test('what came back unused is needed again once it is billed', () => {
  const with1 = { needed: 2_000, issued: 2_000, returned: 1_000 };
  expect(openNeed({ ...with1, billed: false })).toBe(0);
  expect(openNeed({ ...with1, billed: true })).toBe(1_000);
});

test('credits never take off more than is billed, and crediting in one go or in steps leaves the same', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 20 }),
      fc.integer({ min: 1, max: 5_000 }),
      fc.nat(20),
      (pieces, price, off) => {
        const credited = Math.min(off, pieces);
        const [left] = billedParts([
          billOf(pieces * 1_000, pieces * price, credited * price),
        ]).values();
        expect(left).toBe((pieces - credited) * 1_000);
      },
    ),
  );
});

test('an open need is never below zero, and is met once all of it went to the job and stayed', () => {
  const amount = fc.nat(9_000);
  fc.assert(
    fc.property(amount, amount, amount, fc.boolean(), (needed, issued, returned, billed) => {
      const back = Math.min(issued, returned);
      const open = openNeed({ needed, issued, returned: back, billed });
      expect(open).toBeGreaterThanOrEqual(0);
      expect(open).toBeLessThanOrEqual(needed);
      expect(openNeed({ needed, issued: issued + open, returned: back, billed })).toBe(0);
    }),
  );
});
