import { expect, test } from 'vitest';
import { orderState } from './order-state.ts';

const line = (owed: number, received: number) => ({ owed, received });

test('an order is awaited until something is in, and complete once nothing is owed', () => {
  expect(orderState([line(2_000, 0), line(1_000, 0)])).toBe('awaited');
  expect(orderState([line(2_000, 0), line(0, 1_000)])).toBe('part-in');
  expect(orderState([line(1_000, 1_000), line(1_000, 0)])).toBe('part-in');
  expect(orderState([line(0, 2_000), line(0, 1_000)])).toBe('complete');
  // More came than was ordered; what was cancelled is owed no more.
  expect(orderState([line(-500, 1_500), line(0, 0)])).toBe('complete');
});
