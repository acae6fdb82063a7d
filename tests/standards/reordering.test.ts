import { erf } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  demandDuring,
  economicOrder,
  normalQuantile,
  reorderPoint,
  safetyStock,
} from '../../shared/work/parts/reorder.ts';

/**
 * Reorder point, safety stock and economic order quantity against worked examples of textbooks. Each says
 * what of it was read, and where, and what is from memory. The books take z from a table of two decimals;
 * so far our figures may differ from theirs.
 */

const TABLE_STEP = 0.006;

describe('economic order quantity', () => {
  test.each([
    // Stevenson, Operations Management, ch. 12 Example 2. Read.
    ['Stevenson, tyres', { yearly: 9_600, perOrder: 75, holding: 16 }, 300],
    // Heizer and Render, Operations Management, ch. 12 Example 3 and its learning exercise. Read.
    ['Heizer and Render, needles', { yearly: 1_000, perOrder: 10, holding: 0.5 }, 200],
    ['Heizer and Render, more needles', { yearly: 1_200, perOrder: 10, holding: 0.5 }, 219],
  ])('%s', (_name, facts, printed) => {
    expect(Math.round(economicOrder(facts))).toBe(printed);
  });

  test('costs of a year, Stevenson, ch. 12 Example 2: $4,800, 32 orders. Read', () => {
    const quantity = economicOrder({ yearly: 9_600, perOrder: 75, holding: 16 });
    const orders = 9_600 / quantity;
    expect(orders).toBeCloseTo(32, 9);
    expect((quantity / 2) * 16 + orders * 75).toBeCloseTo(4_800, 6);
  });
});

interface Example {
  daily: [mean: number, spread: number];
  lead: [mean: number, spread: number];
  service: number;
  /** As printed. */
  spread: number;
  safety: number;
  point: number;
  /** Half of the last figure that was printed. */
  step: number;
}

describe('safety stock and reorder point', () => {
  test('Stevenson 14th edition, ch. 12 Example 8, sand. Read', () => {
    const during = { mean: 50, spread: 5 };
    expect(normalQuantile(0.97)).toBeCloseTo(1.88, 2);
    expect(Math.abs(safetyStock(during, 0.97) - 9.4)).toBeLessThan(5 * TABLE_STEP);
    expect(Math.abs(reorderPoint(during, 0.97) - 59.4)).toBeLessThan(5 * TABLE_STEP);
  });

  const examples: [string, Example][] = [
    [
      // Taylor, Introduction to Management Science, ch. 16, carpet. Inputs and z read, results from memory.
      'demand varies: 30 a day, give or take 5, for 10 days',
      {
        daily: [30, 5],
        lead: [10, 0],
        service: 0.95,
        spread: 15.8,
        safety: 26.1,
        point: 326.1,
        step: 0.05,
      },
    ],
    [
      // Stevenson, ch. 12, restaurant, in weeks. Inputs read, results from memory.
      'demand varies: 50 a week, give or take 3, for 2 weeks',
      {
        daily: [50, 3],
        lead: [2, 0],
        service: 0.9,
        spread: 4.24,
        safety: 5.43,
        point: 105.43,
        step: 0.005,
      },
    ],
    [
      // Render, Stair and Hanna, Quantitative Analysis for Management, SKU M4389. Inputs read, results from memory.
      'lead time varies: 5 a day for 3 days, give or take 2',
      {
        daily: [5, 0],
        lead: [3, 2],
        service: 0.95,
        spread: 10,
        safety: 16.5,
        point: 31.5,
        step: 0.05,
      },
    ],
    [
      // Heizer and Render, ch. 12, cameras. From memory.
      'both vary: 150 a day, give or take 16, for 5 days, give or take 1',
      {
        daily: [150, 16],
        lead: [5, 1],
        service: 0.95,
        spread: 154,
        safety: 254,
        point: 1_004,
        step: 0.5,
      },
    ],
  ];

  test.each(examples)('%s', (_name, { daily, lead, service, step, ...printed }) => {
    const during = demandDuring(
      { mean: daily[0], spread: daily[1] },
      { mean: lead[0], spread: lead[1] },
    );
    const off = printed.spread * TABLE_STEP + 2 * step;
    expect(Math.abs(during.spread - printed.spread)).toBeLessThanOrEqual(step);
    expect(Math.abs(safetyStock(during, service) - printed.safety)).toBeLessThanOrEqual(off);
    expect(Math.abs(reorderPoint(during, service) - printed.point)).toBeLessThanOrEqual(off);
  });
});

test('shares and standard deviations go with each other as in mathjs 15.2.0', () => {
  for (const share of [0.5, 0.6, 0.8, 0.9, 0.95, 0.975, 0.99, 0.999, 0.9999])
    expect((1 + erf(normalQuantile(share) / Math.SQRT2)) / 2).toBeCloseTo(share, 12);
});

test('figures that make no sense are refused', () => {
  const during = { mean: 1, spread: 1 };
  for (const service of [0.49, 1, Number.NaN])
    expect(() => safetyStock(during, service)).toThrow(RangeError);
  expect(() => demandDuring({ mean: -1, spread: 0 }, during)).toThrow(RangeError);
  expect(() => economicOrder({ yearly: 1, perOrder: 1, holding: 0 })).toThrow(RangeError);
});
