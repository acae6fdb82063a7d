import { expect, test } from 'vitest';
import { lineCreditsOf } from './line-credits.ts';

const amounts = (...of: number[]) => of.map((amount) => ({ amount }));

test('parts of a line add up, and make it whole with the last', () => {
  const notes = [
    { lines: amounts(400, 1_000), lineIndexes: [0, 2] },
    { lines: amounts(600), lineIndexes: [0] },
  ];
  expect(lineCreditsOf(amounts(1_000, 500, 2_000), notes)).toEqual({
    lineCredits: [1_000, 0, 1_000],
    wholeLines: [0],
  });
});

test('a line of nothing is off once a note names it, and not before', () => {
  expect(lineCreditsOf(amounts(0), []).wholeLines).toEqual([]);
  expect(lineCreditsOf(amounts(0), [{ lines: amounts(0), lineIndexes: [0] }]).wholeLines).toEqual([
    0,
  ]);
});
