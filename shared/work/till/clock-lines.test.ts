import { expect, test } from 'vitest';
import { labourLines } from './clock-lines.ts';

const RATES = {
  labourRates: [{ name: 'Machining', rate: 11_000 }],
  labourRate: 8400,
  rounding: 'half-up' as const,
};
const worked = (workKind: string, minutes: number, hourlyCost = 0) => ({
  workKind,
  minutes,
  hourlyCost,
});

test('one line for each kind of work, at its rate, the minutes summed before they are rounded', () => {
  const lines = labourLines(
    [worked('', 20), worked('Machining', 45), worked('', 20), worked('', 20)],
    RATES,
  );
  expect(lines).toEqual([
    expect.objectContaining({
      description: 'Labour',
      workKind: '',
      quantity: 1000,
      unitPrice: 8400,
      priceFrom: 'clocked-time',
    }),
    expect.objectContaining({
      description: 'Machining',
      workKind: 'Machining',
      quantity: 750,
      unitPrice: 11_000,
    }),
  ]);
});

test('an hour costs what those who worked cost on the average of their time', () => {
  // Common practice, no source: (90 × 30.00 + 30 × 20.00) / 120 = 27.50.
  const [line] = labourLines([worked('', 90, 3000), worked('', 30, 2000)], RATES);
  expect(line?.unitCost).toBe(2750);
});

test('the cost is not known unless everybody’s is', () => {
  const [line] = labourLines([worked('', 90, 3000), worked('', 30)], RATES);
  expect(line?.unitCost).toBeNull();
});

test('a kind of work that the shop no longer has is charged at the shop’s one rate', () => {
  expect(labourLines([worked('Grinding', 60)], RATES)[0]?.unitPrice).toBe(8400);
});

test('no time gives no line', () => {
  expect(labourLines([worked('', 0)], RATES)).toEqual([]);
});
