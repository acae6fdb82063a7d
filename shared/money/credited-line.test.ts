import { expect, test } from 'vitest';
import { creditedLine } from './credited-line.ts';

const BILLED = {
  description: 'Piston',
  quantity: 2_000,
  unit: 'pc',
  unitPrice: 6_000,
  unitCost: 3_500,
  discount: { by: 'share', ppm: 100_000 },
  discounted: 1_200,
  amount: 10_800,
} as const;

test('credited whole it is the line again, its cost too', () => {
  expect(creditedLine(BILLED, 10_800)).toEqual(BILLED);
});

test('a part is one piece at that amount, without a cost: nothing came back', () => {
  expect(creditedLine({ ...BILLED, kind: 'part' }, 4_000)).toEqual({
    kind: 'part',
    description: 'Part of: Piston',
    quantity: 1_000,
    unit: '',
    unitPrice: 4_000,
    unitCost: null,
    discount: null,
    discounted: 0,
    amount: 4_000,
  });
});

test('a part of a credit keeps its sign, and its price is above zero', () => {
  expect(creditedLine({ ...BILLED, amount: -2_500 }, -1_000)).toMatchObject({
    unitPrice: 1_000,
    amount: -1_000,
  });
});
