import { expect, test } from 'vitest';
import { marginPpm, priceAtMarkup } from './margin.ts';

test('a part sold below cost has a margin below zero, one without a price has none', () => {
  expect(marginPpm(1_000, 1_250, 'half-up')).toBe(-250_000);
  expect(marginPpm(0, 500, 'half-up')).toBeNull();
});

test('nonsense is refused', () => {
  expect(() => priceAtMarkup(-1, 0, 'half-up')).toThrow(RangeError);
  expect(() => priceAtMarkup(100, -1, 'half-up')).toThrow(RangeError);
  expect(() => priceAtMarkup(1.5, 0, 'half-up')).toThrow(RangeError);
  expect(() => marginPpm(-1, 0, 'half-up')).toThrow(RangeError);
});
