import { expect, test } from 'vitest';
import { usageFigures } from './usage-figures.ts';

const facts = {
  lead: { mean: 7, spread: 0 },
  service: 0.95,
  perOrder: 500,
  unitCost: 1_000,
  holding: 0.25,
};

test('a part that is used evenly is reordered at what is used while an order is on its way', () => {
  const weeks = Array.from({ length: 52 }, () => 2_000);
  expect(usageFigures({ ...facts, weeks })).toEqual({
    weeks: 52,
    used: 104_000,
    perWeek: 2_000,
    spread: 0,
    leadDays: 7,
    duringLead: 2_000,
    safety: 0,
    point: 2_000,
    // √(2 × 104.29 × 5.00 ÷ 2.50) = 20.4
    economicOrder: 20_000,
  });
});

test('the more usage strays, the more is kept', () => {
  const weeks = [0, 4_000, 0, 4_000, 0, 4_000, 0, 4_000, 0, 4_000];
  const figures = usageFigures({ ...facts, weeks });
  // Mean 2, standard deviation 2.108; 1.645 of them for one week: 3.468.
  expect(figures).toMatchObject({ perWeek: 2_000, spread: 2_108, safety: 3_468, point: 6_000 });
});

test('a few weeks say nothing, nor does a part that nobody used; what costs nothing is held for nothing', () => {
  expect(usageFigures({ ...facts, weeks: [1_000, 1_000, 1_000] })).toBeNull();
  expect(usageFigures({ ...facts, weeks: Array.from({ length: 30 }, () => 0) })).toBeNull();
  const weeks = Array.from({ length: 30 }, () => 1_000);
  expect(usageFigures({ ...facts, weeks, unitCost: 0 })?.economicOrder).toBeNull();
});
