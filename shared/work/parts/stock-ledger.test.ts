import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  afterEffect,
  averageCost,
  EMPTY_SHELF,
  effectOf,
  NO_FACTS,
  type Shelf,
  type StockEvent,
  shareOf,
} from './stock-ledger.ts';

const play = (events: readonly StockEvent[], facts = NO_FACTS): Shelf =>
  events.reduce((shelf, event) => afterEffect(shelf, effectOf(event, shelf, facts)), EMPTY_SHELF);

describe('the moving average', () => {
  test('mixes what came at different prices, and the last one takes what is left', () => {
    const events: StockEvent[] = [
      { kind: 'received', quantity: 2_000, cost: 1_000 },
      { kind: 'received', quantity: 1_000, cost: 1_000 },
      { kind: 'issued', quantity: 1_000 },
      { kind: 'scrapped', quantity: 1_000 },
      { kind: 'issued', quantity: 1_000 },
    ];
    const worths = events.map((_, index) => play(events.slice(0, index + 1)).worth);
    expect(worths).toEqual([1_000, 2_000, 1_333, 666, 0]);
    expect(averageCost(play(events.slice(0, 2)))).toBe(667);
    expect(averageCost(EMPTY_SHELF)).toBeNull();
  });

  test('what comes back unused comes back at what it was issued at, whatever the shelf is worth now', () => {
    const shelf = { ...EMPTY_SHELF, onHand: 5_000, worth: 20_000 };
    const issuedToJob = { quantity: 3_000, worth: 100 };
    const back = (quantity: number) =>
      effectOf({ kind: 'returned', quantity }, shelf, { ...NO_FACTS, issuedToJob });
    expect(back(1_000)).toEqual({ quantity: 1_000, worth: 33, reserved: 0, ordered: 0 });
    expect(back(3_000).worth).toBe(100);
  });

  test('what is found is worth what the rest is, and on an empty shelf what such a part costs', () => {
    const found: StockEvent = { kind: 'counted', difference: 500 };
    const facts = { ...NO_FACTS, unitCost: 900 };
    expect(effectOf(found, { ...EMPTY_SHELF, onHand: 2_000, worth: 400 }, facts).worth).toBe(100);
    expect(effectOf(found, EMPTY_SHELF, facts).worth).toBe(450);
  });

  test('a shelf below nothing is worth nothing, and what comes in settles it first', () => {
    const below = play([
      { kind: 'received', quantity: 1_000, cost: 700 },
      { kind: 'issued', quantity: 3_000 },
    ]);
    expect(below).toMatchObject({ onHand: -2_000, worth: 0 });
    const receive = (quantity: number, cost: number) =>
      afterEffect(below, effectOf({ kind: 'received', quantity, cost }, below, NO_FACTS));
    expect(receive(1_500, 900)).toMatchObject({ onHand: -500, worth: 0 });
    expect(receive(2_000, 900)).toMatchObject({ onHand: 0, worth: 0 });
    expect(receive(5_000, 1_000)).toMatchObject({ onHand: 3_000, worth: 600 });
  });
});

describe('promises and orders', () => {
  const facts = { ...NO_FACTS, promisedToJob: 2_000, owedOnLine: 4_000 };
  const full = { ...EMPTY_SHELF, onHand: 9_000, promised: 2_000, onOrder: 4_000, worth: 900 };

  test('issuing to a job uses up what was promised to it, and no more', () => {
    const issue = (quantity: number) => effectOf({ kind: 'issued', quantity }, full, facts);
    expect(issue(1_000)).toEqual({ quantity: -1_000, worth: -100, reserved: -1_000, ordered: 0 });
    expect(issue(3_000).reserved).toBe(-2_000);
  });

  test('receiving pays off what the supplier owes on the line, over-delivery no more than that', () => {
    const receive = (quantity: number) =>
      effectOf({ kind: 'received', quantity, cost: 0 }, full, facts).ordered;
    expect([receive(3_000), receive(6_000)]).toEqual([-3_000, -4_000]);
  });

  test('an order and its closing touch neither the shelf nor its worth', () => {
    const kinds = ['ordered', 'order-closed', 'reserved', 'released'] as const;
    const effects = kinds.map((kind) => effectOf({ kind, quantity: 500 }, full, facts));
    expect(effects).toEqual([
      { quantity: 0, worth: 0, reserved: 0, ordered: 500 },
      { quantity: 0, worth: 0, reserved: 0, ordered: -500 },
      { quantity: 0, worth: 0, reserved: 500, ordered: 0 },
      { quantity: 0, worth: 0, reserved: -500, ordered: 0 },
    ]);
  });
});

test('a share is the nearest whole number beyond where floating point is exact', () => {
  expect(shareOf(9_007_199_254_740_991, 3, 7)).toBe(3_860_228_252_031_853);
  expect([shareOf(5, 1, 2), shareOf(-5, 1, 2)]).toEqual([3, -3]);
});

test('there is never worth without stock, and never stock of negative worth', () => {
  const quantity = fc.integer({ min: 1, max: 5_000 });
  const event = fc.oneof(
    fc.record({ kind: fc.constant('received' as const), quantity, cost: fc.nat(10_000) }),
    fc.record({ kind: fc.constantFrom('issued' as const, 'scrapped' as const), quantity }),
    fc.record({
      kind: fc.constantFrom('counted' as const, 'adjusted' as const),
      difference: fc.integer({ min: -5_000, max: 5_000 }),
    }),
  );
  fc.assert(
    fc.property(fc.array(event, { maxLength: 60 }), fc.nat(5_000), (events, unitCost) => {
      const { onHand, worth } = play(events, { ...NO_FACTS, unitCost });
      expect(worth).toBeGreaterThanOrEqual(0);
      if (onHand <= 0) expect(worth).toBe(0);
    }),
  );
});
