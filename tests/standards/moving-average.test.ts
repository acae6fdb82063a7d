import { expect, test } from 'vitest';
import {
  afterEffect,
  averageCost,
  EMPTY_SHELF,
  effectOf,
  NO_FACTS,
  type Shelf,
  type StockEvent,
} from '../../shared/work/parts/stock-ledger.ts';

/**
 * Moving-average cost against a textbook's worked example: Houston Electronics, appendix 6A of an
 * introduction to financial accounting (published as a course text; read). 100 bought at $10, 200 at $11,
 * 300 at $12; 550 sold; 400 bought at $13. The book rounds the balance to whole dollars before the last
 * average (12.816); unrounded it is 12.8148.
 */

const bought = (units: number, each: number): StockEvent => ({
  kind: 'received',
  quantity: units * 1_000,
  cost: units * each * 100,
});
const after = (shelf: Shelf, event: StockEvent): Shelf =>
  afterEffect(shelf, effectOf(event, shelf, NO_FACTS));
const dollars = (shelf: Shelf): number => shelf.worth / shelf.onHand / 0.1;

test('each receipt moves the average, and what is sold leaves at it', () => {
  const two = [bought(100, 10), bought(200, 11)].reduce(after, EMPTY_SHELF);
  expect(dollars(two)).toBeCloseTo(10.667, 3);
  const three = after(two, bought(300, 12));
  expect(dollars(three)).toBeCloseTo(11.333, 3);
  expect(averageCost(three)).toBe(1_133);

  const sold = after(three, { kind: 'issued', quantity: 550_000 });
  expect((three.worth - sold.worth) / 100).toBeCloseTo(6_233, 0);
  expect(sold.worth / 100).toBeCloseTo(567, 0);

  const last = after(sold, bought(400, 13));
  expect(last).toMatchObject({ onHand: 450_000 });
  expect(last.worth / 100).toBeCloseTo(5_767, 0);
  expect(dollars(last)).toBeCloseTo(12.8148, 3);
});
