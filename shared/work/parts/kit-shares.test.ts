import { expect, test } from 'vitest';
import { kitShares } from './kit-shares.ts';

test('a kit’s worth goes to its pieces by what they cost singly, to the cent', () => {
  const pieces = [
    { quantity: 1_000, unitCost: 300 },
    { quantity: 2_000, unitCost: 150 },
    { quantity: 1_000, unitCost: 600 },
  ];
  expect(kitShares(1_001, pieces)).toEqual([250, 250, 501]);
});

test('as soon as one piece’s cost is unknown, by their numbers', () => {
  const pieces = [
    { quantity: 1_000, unitCost: 300 },
    { quantity: 3_000, unitCost: 0 },
  ];
  expect(kitShares(400, pieces)).toEqual([100, 300]);
  expect(kitShares(0, pieces)).toEqual([0, 0]);
});
